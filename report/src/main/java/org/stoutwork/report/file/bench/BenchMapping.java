package org.stoutwork.report.file.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.grade.GrowthDefects;

/** The outermost map of a bench file. Serves one reading. */
final class BenchMapping {

  static final int MOST_PUPILS = 8;

  private final WoodCatalogue known;
  private final Places places = new Places();

  BenchMapping(WoodCatalogue known) {
    this.known = known;
  }

  Got<Draft> read(Fields file) {
    file.wholeNumber("schemaVersion", BenchFile.SCHEMA_VERSION, BenchFile.SCHEMA_VERSION)
        .optional();
    BenchSketch sketch = new BenchSketch();
    Take.value(file.text("bench"), sketch::name);
    Lengths lengths = new Lengths(units(file));
    Take.value(lengths.size(file, "height"), sketch::height);
    wood(file, sketch);
    use(file, sketch);
    new SiteMapping().read(file, sketch);
    new TopMapping(lengths).read(file, sketch);
    new EndFramesMapping(lengths, places).read(file, sketch);
    new StretcherMapping(lengths, places).read(file, sketch);
    new ExtrasMapping(lengths, places).read(file, sketch);
    WoodCatalogue woods = new OwnWoods(known).read(file);
    return Got.of(new Draft(sketch, woods, places));
  }

  private static Unit units(Fields file) {
    Map<String, Unit> units = new LinkedHashMap<>();
    units.put("mm", Unit.MM);
    units.put("in", Unit.IN);
    return file.scalar("units", Kinds.choice(units))
        .orDefault(Unit.MM, "lengths without a unit are in millimetres unless the file says in")
        .orElse(Unit.MM);
  }

  private static void wood(Fields file, BenchSketch sketch) {
    Take.value(file.text("wood"), sketch::wood);
    Take.value(file.text("gradedAs"), sketch::gradedAs);
    Take.value(file.scalar("growth", growth()), sketch::growth);
    Take.value(file.number("grainRun", Range.POSITIVE), sketch::grainRun);
  }

  static Kind<GrowthDefects> growth() {
    Map<String, GrowthDefects> words = new LinkedHashMap<>();
    words.put("clear", GrowthDefects.CLEAR);
    words.put("a few small knots", GrowthDefects.FEW_SMALL_KNOTS);
    words.put("knotty", GrowthDefects.KNOTTY);
    return WordKinds.of(words);
  }

  private static void use(Fields file, BenchSketch sketch) {
    Take.value(file.scalar("duty", WordKinds.of(Duty.class, Duty::words)), sketch::duty);
    Take.value(file.wholeNumber("pupils", 0, MOST_PUPILS), sketch::pupils);
    Take.value(
        file.scalar("footing", WordKinds.of(Footing.class, Footing::words)), sketch::footing);
    Take.value(file.scalar("glue", WordKinds.of(GlueKind.class, GlueKind::words)), sketch::glue);
    Take.value(
        file.scalar("basis", WordKinds.of(BasisChoice.class, BasisChoice::words)), sketch::basis);
  }
}
