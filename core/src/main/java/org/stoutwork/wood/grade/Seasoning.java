package org.stoutwork.wood.grade;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Wood;

/**
 * The most that a piece with knots may gain by drying, as a factor on the green value. Clear wood
 * gains more; the law of clear wood alone would credit a knotty piece with strength it has not.
 * Immutable.
 */
public final class Seasoning {

  private static final double DRY = 15;
  private static final double PART_DRY = 19;

  private final Map<ClearProperty, Row> rows = new EnumMap<>(ClearProperty.class);

  private Seasoning() {
    for (Row row : Table.beside(Wood.class, "seasoning.csv").rows()) {
      rows.put(ClearProperty.ofRow(row.required("property")).orElseThrow(), row);
    }
  }

  /** Reads the table. */
  public static Seasoning load() {
    return new Seasoning();
  }

  /**
   * The factor on the green value at a moisture content; empty for a property that the table does
   * not limit.
   *
   * @param what a property of clear wood
   * @param moisture content, %
   */
  public Optional<Property> most(ClearProperty what, double moisture) {
    return Optional.ofNullable(rows.get(what)).map(row -> factor(row, moisture));
  }

  private static Property factor(Row row, double moisture) {
    double factor = 1;
    if (moisture <= DRY) {
      factor = row.requiredNumber("at_15_pct");
    } else if (moisture <= PART_DRY) {
      factor = row.requiredNumber("at_19_pct");
    }
    return new Property(factor, Unit.ONE, row.source());
  }
}
