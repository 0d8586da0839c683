package org.stoutwork.joint.regression;

import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Mean withdrawal of one glued dowel from side grain, a regression on furniture tests. An ultimate
 * mean, not a design value; its domain is the size of furniture dowels.
 */
public final class DowelWithdrawal {

  /** Diameters it is taken to hold for, mm: 1/4 to 1/2 in. */
  public static final double LEAST_DIAMETER = 6.35;

  /** See {@link #LEAST_DIAMETER}. */
  public static final double MOST_DIAMETER = 12.7;

  /** Depths it is taken to hold for, mm: 1/2 to 1 1/2 in. */
  public static final double LEAST_DEPTH = 12.7;

  /** See {@link #LEAST_DEPTH}. */
  public static final double MOST_DEPTH = 38.1;

  private static final Formula FORCE =
      Formula.define("F")
          .meaning("mean withdrawal force of a glued dowel")
          .unit(Unit.LBF)
          .where("D", "dowel diameter", Unit.IN)
          .where("L", "depth in the wood", Unit.IN)
          .where("S_1", "shear strength of the wood", Unit.PSI)
          .where("S_2", "shear strength of the dowel", Unit.PSI)
          .where("abc", "glue, dowel kind and fit, each near 1", Unit.ONE)
          .fitted("0.834*D*L^0.89*(0.95*S_1 + S_2)*abc")
          .source(Source.fromMemory("Eckelman, Forest Products Journal 19(10) 1969", "withdrawal"));

  private DowelWithdrawal() {}

  /**
   * Writes the mean beside a capacity, for comparison only: the tests scatter too much, and some
   * woods hold far less. Nothing is written when nobody keeps the lines.
   *
   * @param d mm
   * @param depth mm, in side grain
   * @param woodShear MPa, mean of clear wood; 0 if unknown
   */
  public static void beside(Pad pad, double d, double depth, double woodShear) {
    if (!pad.keepsLines()) {
      return;
    }
    if (woodShear > 0) {
      pad.remark(
          "For comparison, not counted: the mean of furniture tests, the dowel taken as strong in"
              + " shear as the wood; what breaks on average, no design value.");
      mean(pad, d, depth, woodShear, woodShear, 1);
    } else {
      pad.remark(
          "No comparison with furniture tests: the mean shear strength of this wood is not known.");
    }
  }

  /**
   * Mean withdrawal force, N; empty outside the domain, with a remark that says so.
   *
   * @param d mm
   * @param depth mm
   * @param woodShear MPa, mean
   * @param dowelShear MPa, mean
   * @param factors product of glue, dowel and fit factors
   */
  public static OptionalDouble mean(
      Pad pad, double d, double depth, double woodShear, double dowelShear, double factors) {
    boolean inside =
        d >= LEAST_DIAMETER && d <= MOST_DIAMETER && depth >= LEAST_DEPTH && depth <= MOST_DEPTH;
    if (!inside) {
      pad.remark(
          "Outside the range of the furniture tests: dowels of 6.35 to 12.7 mm, 12.7 to 38.1 mm"
              + " deep. No value is given.");
      return OptionalDouble.empty();
    }
    double lbf =
        pad.take(
            FORCE,
            Unit.MM.convert(d, Unit.IN),
            Unit.MM.convert(depth, Unit.IN),
            Unit.MPA.convert(woodShear, Unit.PSI),
            Unit.MPA.convert(dowelShear, Unit.PSI),
            factors);
    return OptionalDouble.of(Unit.LBF.convert(lbf, Unit.N));
  }
}
