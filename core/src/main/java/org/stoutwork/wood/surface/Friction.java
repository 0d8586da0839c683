package org.stoutwork.wood.surface;

import java.util.List;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Wood;

/**
 * Coefficient of friction between two surfaces. Published values scatter widely: use it only where
 * it acts against the bench, or with a large margin.
 *
 * @param surface one side
 * @param against the other side
 * @param condition of the surfaces or direction to the grain; may be empty
 * @param moisture in words
 * @param kind static, sliding, or a design value
 * @param low lower end of the range, above 0
 * @param high upper end, at least {@code low}
 * @param source of the range
 */
public record Friction(
    String surface,
    String against,
    String condition,
    String moisture,
    String kind,
    double low,
    double high,
    Source source) {

  /**
   * @throws IllegalArgumentException if the range is empty or not above 0
   */
  public Friction {
    if (!(low > 0 && high >= low && Double.isFinite(high))) {
      throw new IllegalArgumentException(
          "a range of friction runs upward from above 0; it was %s to %s".formatted(low, high));
    }
  }

  /** Every pair of surfaces in the table. */
  public static List<Friction> table() {
    return Table.beside(Wood.class, "friction.csv").rows().stream().map(Friction::of).toList();
  }

  private static Friction of(Row row) {
    return new Friction(
        row.required("surface_a"),
        row.required("surface_b"),
        row.text("condition"),
        row.required("moisture"),
        row.required("type"),
        row.requiredNumber("mu_low"),
        row.requiredNumber("mu_high"),
        row.source());
  }
}
