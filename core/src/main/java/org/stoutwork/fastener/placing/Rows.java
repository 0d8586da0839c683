package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** How many of the fasteners in a row along the force count, because they share it unevenly. */
public final class Rows {

  private static final Formula STOUT =
      Formula.define("n_ef")
          .meaning("effective number of fasteners in a row along the grain")
          .where("n", "number", Unit.ONE)
          .where("a_1", "spacing", Unit.MM)
          .where("d", "diameter", Unit.MM)
          .as("min(n, n^0.9*(a_1/(13*d))^0.25)")
          .source(Documents.ec5("8.5.1.1 (8.34)"));

  private static final Formula EXPONENT =
      Formula.define("k_ef")
          .meaning("exponent of a row of slender fasteners")
          .where("a_1", "spacing", Unit.MM)
          .where("d", "diameter", Unit.MM)
          .as("min(1, 0.5 + (a_1/d - 4)/15, 0.7 + (a_1/d - 7)/20," + " 0.85 + 3*(a_1/d - 10)/80)")
          .source(Documents.ec5("Table 8.1, straight lines between its rows"));

  private static final Formula SLENDER_ROW =
      Formula.define("n_ef")
          .meaning("effective number of fasteners in a row along the grain")
          .where("n", "number", Unit.ONE)
          .where("k_ef", "exponent", Unit.ONE)
          .as("n^k_ef")
          .source(Documents.ec5("8.3.1.1 (8.17)"));

  private static final Formula SPREAD =
      Formula.define("u")
          .meaning("term of the group action factor")
          .where("γ", "load and slip modulus of one fastener, 180 000·D^1.5", Unit.LBF_PER_IN)
          .where("s", "spacing", Unit.IN)
          .where("EA_1", "axial stiffness of one piece", Unit.LBF)
          .where("EA_2", "axial stiffness of the other", Unit.LBF)
          .as("1 + γ*s/2*(1/EA_1 + 1/EA_2)")
          .source(Documents.nds("11.3.6 (11.3-1), timber on timber"));

  private static final Formula DECAY =
      Formula.define("m")
          .meaning("share that one fastener leaves to the next")
          .where("u", "term", Unit.ONE)
          .as("u - sqrt(u^2 - 1)")
          .source(Documents.nds("11.3.6 (11.3-1)"));

  private static final Formula GROUP =
      Formula.define("C_g")
          .meaning("group action factor of a row")
          .where("m", "share left to the next", Unit.ONE)
          .where("n", "number", Unit.ONE)
          .where("R_EA", "lesser over greater axial stiffness", Unit.ONE)
          .as("m*(1 - m^(2*n))*(1 + R_EA)" + "/(n*((1 + R_EA*m^n)*(1 + m) - 1 + m^(2*n))*(1 - m))")
          .source(Documents.nds("11.3.6 (11.3-1)"));

  private static final Source SMALL = Documents.nds("11.3.6: 1 below 1/4 in");

  private Rows() {}

  /**
   * Effective number of EN 1995-1-1 for a force along row and grain: as bolts above 6 mm, as nails
   * up to that.
   *
   * @param spacing mm
   * @param d diameter, mm
   * @param effective diameter of the shank or 1.1 times the core, by which the rule is chosen, mm
   */
  public static double effective(Pad pad, int n, double spacing, double d, double effective) {
    if (n == 1) {
      return 1;
    }
    return effective > Distances.SLENDER
        ? pad.take(STOUT, n, spacing, d)
        : pad.take(SLENDER_ROW, n, pad.take(EXPONENT, spacing, d));
  }

  /**
   * Number of fasteners times the group action factor of the NDS.
   *
   * @param spacing mm
   * @param d diameter, mm
   * @param ea1 modulus times area of one piece, N
   * @param ea2 the same of the other, N
   */
  public static double allowable(Pad pad, int n, double spacing, double d, double ea1, double ea2) {
    double inches = Unit.MM.convert(d, Unit.IN);
    if (n == 1) {
      return 1;
    }
    if (d < Distances.QUARTER_INCH) {
      pad.given("C_g", "group action factor", 1, Unit.ONE, SMALL);
      return n;
    }
    double gamma = 180_000 * Math.pow(inches, 1.5);
    double u =
        pad.take(
            SPREAD,
            gamma,
            Unit.MM.convert(spacing, Unit.IN),
            Unit.N.convert(ea1, Unit.LBF),
            Unit.N.convert(ea2, Unit.LBF));
    double m = pad.take(DECAY, u);
    return n * pad.take(GROUP, m, n, Math.min(ea1, ea2) / Math.max(ea1, ea2));
  }
}
