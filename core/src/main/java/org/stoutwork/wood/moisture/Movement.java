package org.stoutwork.wood.moisture;

import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.wood.Wood;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Shrinking and swelling of a size across the grain between two moisture contents.
 *
 * <p>Within 6 to 14 % by the coefficients of dimensional change; beyond by the handbook's linear
 * law between green and ovendry, up to 30 %.
 */
public final class Movement {

  /** Relative change along the grain per 1 % of moisture content. */
  public static final Property ALONG =
      new Property(
          0.00005,
          Unit.ONE,
          Source.fromMemory(
              "Wood Handbook FPL-GTR-190 (2010)", "chapter 4: 0.1 to 0.2 % green to ovendry"));

  private static final double LOWEST = 6;
  private static final double HIGHEST = 14;

  private static final Formula BY_COEFFICIENT =
      Formula.define("Δb")
          .meaning("change of the size")
          .unit(Unit.MM)
          .where("b", "size at the first moisture content", Unit.MM)
          .where("C", "coefficient of dimensional change", Unit.ONE)
          .where("M_1", "first moisture content", Unit.POINT)
          .where("M_2", "second moisture content", Unit.POINT)
          .as("b*C*(M_2 - M_1)")
          .source(Source.published("Wood Handbook FPL-GTR-190 (2010)", "chapter 13, Table 13-5"));

  private static final Formula BY_TOTAL =
      Formula.define("Δb")
          .meaning("change of the size")
          .unit(Unit.MM)
          .where("b", "size at the first moisture content", Unit.MM)
          .where("M_1", "first moisture content", Unit.POINT)
          .where("M_2", "second moisture content", Unit.POINT)
          .where("S", "shrinkage from green to ovendry in percent", Unit.ONE)
          .as("b*(M_2 - M_1)/(3000/S - 30 + M_1)")
          .source(Source.fromMemory("Wood Handbook FPL-GTR-190 (2010)", "eq. 13-2"));

  private Movement() {}

  /**
   * The change of a size across the grain.
   *
   * @param shrinkage of the wood
   * @param rings how the rings lie to the size
   * @param size at the first moisture content, mm, above 0
   * @param from first moisture content, %, 0 to 30
   * @param to second moisture content, %, 0 to 30
   * @param pad to write on
   * @throws IllegalArgumentException if a number is outside its range
   */
  public static SizeChange across(
      Shrinkage shrinkage, RingDirection rings, double size, double from, double to, Pad pad) {
    requireRange(size, from, to);
    return switch (rings) {
      case RADIAL -> same(radial(shrinkage, size, from, to, pad));
      case TANGENTIAL -> same(tangential(shrinkage, size, from, to, pad));
      case UNKNOWN -> {
        double r = radial(shrinkage, size, from, to, pad);
        double t = tangential(shrinkage, size, from, to, pad);
        yield Math.abs(r) <= Math.abs(t) ? new SizeChange(r, t) : new SizeChange(t, r);
      }
    };
  }

  private static SizeChange same(double change) {
    return new SizeChange(change, change);
  }

  private static double radial(Shrinkage s, double size, double from, double to, Pad pad) {
    pad.remark("Across the growth rings (quarter-sawn):");
    return change(s.radialCoefficient(), s.radial(), size, from, to, pad);
  }

  private static double tangential(Shrinkage s, double size, double from, double to, Pad pad) {
    pad.remark("Along the growth rings (flat-sawn):");
    return change(s.tangentialCoefficient(), s.tangential(), size, from, to, pad);
  }

  private static double change(
      Property coefficient, Property total, double size, double from, double to, Pad pad) {
    if (Math.min(from, to) >= LOWEST && Math.max(from, to) <= HIGHEST) {
      double c =
          pad.given(
              "C",
              "relative change per 1 % MC",
              coefficient.value(),
              Unit.ONE,
              coefficient.source());
      return pad.take(BY_COEFFICIENT, size, c, from, to);
    }
    double s = pad.given("S", "shrinkage in percent", total.value(), Unit.ONE, total.source());
    return pad.take(BY_TOTAL, size, from, to, s);
  }

  private static void requireRange(double size, double from, double to) {
    if (!(size > 0 && Double.isFinite(size))) {
      throw new IllegalArgumentException("a size must be above 0 mm; it was %s".formatted(size));
    }
    for (double moisture : new double[] {from, to}) {
      if (!(moisture >= 0 && moisture <= MoistureRange.SATURATION)) {
        throw new IllegalArgumentException(
            "wood moves from 0 to 30 %% moisture content; %s was asked".formatted(moisture));
      }
    }
  }

  /** Relative change of a sheet in its plane per 1 % of moisture content, if it is known. */
  public static Optional<Property> ofSheet(Product product) {
    return Table.beside(Wood.class, "sheet-movement.csv").rows().stream()
        .filter(row -> row.required("product").equals(product.words()))
        .findFirst()
        .map(row -> new Property(row.requiredNumber("per_pct_MC"), Unit.ONE, row.source()));
  }
}
