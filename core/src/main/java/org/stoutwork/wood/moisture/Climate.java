package org.stoutwork.wood.moisture;

import java.util.List;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.time.ServiceClass;
import org.stoutwork.working.Pad;

/**
 * The air in which a bench stands, as a range over the year. The presets are choices of this
 * project, meant to be edited; a measurement in the room is better.
 *
 * @param key short name, such as {@code school}
 * @param words for people
 * @param lowHumidity lowest relative humidity that lasts for weeks, as a fraction
 * @param highHumidity highest relative humidity that lasts for weeks, as a fraction
 * @param celsius usual temperature
 * @param serviceClass of EN 1995-1-1
 * @param source of the range
 */
public record Climate(
    String key,
    String words,
    double lowHumidity,
    double highHumidity,
    double celsius,
    ServiceClass serviceClass,
    Source source) {

  /**
   * @throws IllegalArgumentException if the humidities do not rise within 0 to 0.95
   */
  public Climate {
    if (!(lowHumidity >= 0 && highHumidity >= lowHumidity && highHumidity <= 0.95)) {
      throw new IllegalArgumentException(
          "relative humidity must run upward within 0 to 0.95; it was %s to %s"
              .formatted(lowHumidity, highHumidity));
    }
  }

  /** The presets, in the order of their table. */
  public static List<Climate> presets() {
    return Table.beside(Wood.class, "climates.csv").rows().stream().map(Climate::of).toList();
  }

  private static Climate of(Row row) {
    return new Climate(
        row.required("key"),
        row.required("words"),
        row.requiredNumber("rh_low_pct") / 100,
        row.requiredNumber("rh_high_pct") / 100,
        row.requiredNumber("temp_C"),
        ServiceClass.numbered((int) row.requiredNumber("service_class")),
        row.source());
  }

  /** The moisture contents of wood that follow from the range of the air. */
  public MoistureRange moisture(Pad pad) {
    return new MoistureRange(
        EquilibriumMoisture.percent(lowHumidity, celsius, pad),
        EquilibriumMoisture.percent(highHumidity, celsius, pad));
  }
}
