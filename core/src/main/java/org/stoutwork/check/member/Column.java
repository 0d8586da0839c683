package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * How much of its compression strength a slender member keeps (EN 1995-1-1 6.3.2 and NDS 3.7.1,
 * both from memory). Lengths in mm, stresses and moduli in MPa, all above 0.
 */
public final class Column {

  private static final Source EC5 = Source.fromMemory("EN 1995-1-1", "6.3.2");
  private static final Source NDS = Source.fromMemory("NDS", "3.7.1");

  private static final double BETA_C_SOLID = 0.2;
  private static final double C_SAWN = 0.8;

  private static final Formula SLENDERNESS =
      Formula.define("λ")
          .meaning("slenderness of a rectangle, length over radius of gyration")
          .where("l_{ef}", "buckling length", Unit.MM)
          .where("h", "depth in the plane of buckling", Unit.MM)
          .as("l_{ef}*sqrt(12)/h")
          .source(EC5);

  private static final Formula RELATIVE =
      Formula.define("λ_{rel}")
          .meaning("relative slenderness")
          .where("λ", "slenderness", Unit.ONE)
          .where("f_{c,0,k}", "characteristic compression strength", Unit.MPA)
          .where("E_{05}", "5 % modulus", Unit.MPA)
          .as("λ/π*sqrt(f_{c,0,k}/E_{05})")
          .source(EC5);

  private static final Formula EUROPEAN_K =
      Formula.define("k")
          .meaning("factor of instability")
          .where("β_c", "straightness factor", Unit.ONE)
          .where("λ_{rel}", "relative slenderness", Unit.ONE)
          .as("0.5*(1 + β_c*(λ_{rel} - 0.3) + λ_{rel}^2)")
          .source(EC5);

  private static final Formula EUROPEAN =
      Formula.define("k_c")
          .meaning("part of the compression strength that buckling leaves")
          .where("k", "factor of instability", Unit.ONE)
          .where("λ_{rel}", "relative slenderness", Unit.ONE)
          .as("1/(k + sqrt(k^2 - λ_{rel}^2))")
          .source(EC5);

  private static final Formula MINIMUM =
      Formula.define("E_{min}")
          .meaning("modulus for stability")
          .unit(Unit.MPA)
          .where("E_{05}", "5 % modulus", Unit.MPA)
          .as("E_{05}/1.66")
          .source(Source.fromMemory("NDS", "appendix D"));

  private static final Formula AMERICAN_CRITICAL =
      Formula.define("F_{cE}")
          .meaning("critical buckling stress")
          .unit(Unit.MPA)
          .where("E_{min}", "modulus for stability", Unit.MPA)
          .where("l_{ef}", "buckling length", Unit.MM)
          .where("h", "depth in the plane of buckling", Unit.MM)
          .as("0.822*E_{min}/(l_{ef}/h)^2")
          .source(NDS);

  private static final Formula AMERICAN =
      Formula.define("C_P")
          .meaning("part of the compression strength that buckling leaves")
          .where("F_{cE}", "critical buckling stress", Unit.MPA)
          .where("F_c", "compression strength", Unit.MPA)
          .where("c", "factor for sawn timber", Unit.ONE)
          .as("(1 + F_{cE}/F_c)/(2*c)" + " - sqrt(((1 + F_{cE}/F_c)/(2*c))^2 - F_{cE}/F_c/c)")
          .source(NDS);

  private static final double STOCKY = 0.3;

  private Column() {}

  /**
   * Part k_c of the strength kept under partial factors; solid timber.
   *
   * @param length over which the member buckles, mm
   * @param h depth in the plane in which it buckles, mm
   * @param fc0k characteristic compression strength along the grain, MPa
   * @param e05 5 % modulus along the grain, MPa
   * @return above 0 and up to 1
   */
  public static double european(Pad pad, double length, double h, double fc0k, double e05) {
    double slenderness = pad.take(RELATIVE, pad.take(SLENDERNESS, length, h), fc0k, e05);
    if (slenderness <= STOCKY) {
      pad.remark("λ_rel ≤ 0.3: the member is stocky, k_c = 1.");
      return 1;
    }
    double k = pad.take(EUROPEAN_K, BETA_C_SOLID, slenderness);
    return pad.take(EUROPEAN, k, slenderness);
  }

  /**
   * Modulus E_min with which members are checked against buckling and lateral buckling under
   * allowable stresses, MPa.
   *
   * @param e05 5 % modulus along the grain, MPa
   */
  public static double minimum(Pad pad, double e05) {
    return pad.take(MINIMUM, e05);
  }

  /**
   * Compression stress F_cE at which the member buckles under allowable stresses, MPa.
   *
   * @param length over which the member buckles, mm
   * @param h depth in the plane in which it buckles, mm
   * @param eMin modulus for stability, MPa
   */
  public static double critical(Pad pad, double length, double h, double eMin) {
    return pad.take(AMERICAN_CRITICAL, eMin, length, h);
  }

  /**
   * Part C_P of the strength kept under allowable stresses; sawn timber.
   *
   * @param critical compression stress at which the member buckles, MPa
   * @param fc allowable compression stress along the grain of a short member, MPa
   * @return above 0 and below 1
   */
  public static double american(Pad pad, double critical, double fc) {
    return pad.take(AMERICAN, critical, fc, C_SAWN);
  }
}
