package org.stoutwork.report.file.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stoutwork.bench.sketch.AirSketch;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.PeopleSketch;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Quantities;
import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.time.ServiceClass;

/** The room in which the bench stands, and the people behind the sheet. */
final class SiteMapping {

  private static final double DRIEST = 3;
  private static final double WETTEST = 30;
  private static final Kind<Double> HUMIDITY = Quantities.percent("a relative humidity", 0, 95);

  void read(Fields file, BenchSketch sketch) {
    Take.part(file, "air", fields -> sketch.air(air -> air(fields, air)));
    Take.part(file, "people", fields -> sketch.people(people -> people(fields, people)));
  }

  private static void air(Fields fields, AirSketch air) {
    Take.value(fields.scalar("climate", climate()), air::climate);
    Take.value(fields.scalar("lowHumidity", HUMIDITY), air::lowHumidity);
    Take.value(fields.scalar("highHumidity", HUMIDITY), air::highHumidity);
    Take.value(fields.scalar("temperature", Temperature.KIND), air::celsius);
    Take.value(
        fields.wholeNumber("serviceClass", 1, 3),
        number -> air.serviceClass(ServiceClass.numbered(number)));
    Take.value(fields.moisture("moistureAtAssembly", DRIEST, WETTEST), air::moistureAtAssembly);
    Take.value(fields.moisture("driest", DRIEST, WETTEST), air::driest);
    Take.value(fields.moisture("wettest", DRIEST, WETTEST), air::wettest);
  }

  private static Kind<String> climate() {
    Map<String, String> keys = new LinkedHashMap<>();
    Climate.presets().forEach(preset -> keys.put(preset.key(), preset.key()));
    return WordKinds.of(keys);
  }

  private static void people(Fields fields, PeopleSketch people) {
    Take.value(fields.text("prepared"), people::prepared);
    Take.value(fields.text("checked"), people::checked);
    Take.value(fields.text("project"), people::project);
    Take.value(fields.scalar("revision", Take.MARK), people::revision);
    Take.value(fields.scalar("date", Take.MARK), people::date);
  }
}
