package org.stoutwork.wood.grade;

import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Wood;
import org.stoutwork.working.Pad;

/**
 * Strength ratios for growth. Of knots and slope of grain the worse one counts, as in ASTM D245;
 * they are not multiplied. Immutable.
 */
public final class GrowthRatios {

  private static final Source STRAIGHT = Source.derived("grain straighter than 1:20 costs nothing");

  private final Table defects;
  private final Table slopes;

  private GrowthRatios() {
    defects = Table.beside(Wood.class, "growth-ratios.csv");
    slopes = Table.beside(Wood.class, "slope-of-grain.csv");
  }

  /** Reads the tables. */
  public static GrowthRatios load() {
    return new GrowthRatios();
  }

  /** What a strength answers to; each has its column in the tables. */
  public enum Ratio {
    BENDING("bending", "bending"),
    COMPRESSION("compression", "compression"),
    SHEAR("shear", ""),
    MODULUS("modulus", "");

    private final String defectColumn;
    private final String slopeColumn;

    Ratio(String defectColumn, String slopeColumn) {
      this.defectColumn = defectColumn;
      this.slopeColumn = slopeColumn;
    }
  }

  /** The words that stand for a choice. */
  public String words(GrowthDefects choice) {
    return row(choice).required("words");
  }

  /** The ratio for knots and checks. */
  public Property ofDefects(GrowthDefects choice, Ratio ratio) {
    Row row = row(choice);
    return new Property(row.requiredNumber(ratio.defectColumn), Unit.ONE, row.source());
  }

  private Row row(GrowthDefects choice) {
    return defects.rows().stream()
        .filter(row -> row.required("key").equals(choice.key()))
        .findFirst()
        .orElseThrow();
  }

  /** The ratio for the slope of grain: that of the next steeper slope in the table. */
  public Property ofSlope(Growth growth, Ratio ratio) {
    Property best = new Property(1, Unit.ONE, STRAIGHT);
    if (growth.grainRun().isEmpty() || ratio.slopeColumn.isEmpty()) {
      return best;
    }
    double run = growth.grainRun().getAsDouble();
    List<Row> steeper =
        slopes.rows().stream().filter(row -> row.requiredNumber("run") <= run).toList();
    Row row = steeper.get(steeper.size() - 1);
    return new Property(row.requiredNumber(ratio.slopeColumn), Unit.ONE, row.source());
  }

  /** The ratio that counts: the smaller one, written on the pad. */
  public double ratio(Growth growth, Ratio ratio, Pad pad) {
    Property knots = ofDefects(growth.defects(), ratio);
    Property slope = ofSlope(growth, ratio);
    boolean bySlope = slope.value() < knots.value();
    Property worse = bySlope ? slope : knots;
    return pad.given("SR", meaning(bySlope, growth), worse.value(), Unit.ONE, worse.source());
  }

  private static String meaning(boolean bySlope, Growth growth) {
    return bySlope
        ? "strength ratio, slope of grain 1:%s".formatted(growth.grainRun().getAsDouble())
        : "strength ratio, " + growth.defects().key().replace('-', ' ');
  }
}
