package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** How much of its compression strength a slender member keeps. */
final class Column {

  private static final Source EC5 = Source.fromMemory("EN 1995-1-1", "6.3.2");
  private static final Source NDS = Source.fromMemory("NDS", "3.7.1");

  static final double BETA_C_SOLID = 0.2;
  static final double C_SAWN = 0.8;

  static final Formula SLENDERNESS =
      Formula.define("λ_{rel}")
          .meaning("relative slenderness")
          .where("l_{ef}", "buckling length", Unit.MM)
          .where("h", "depth in the plane of buckling", Unit.MM)
          .where("f_{c,0,k}", "characteristic compression strength", Unit.MPA)
          .where("E_{05}", "5 % modulus", Unit.MPA)
          .as("l_{ef}*sqrt(12)/(π*h)*sqrt(f_{c,0,k}/E_{05})")
          .source(EC5);

  static final Formula EUROPEAN_K =
      Formula.define("k")
          .meaning("factor of instability")
          .where("β_c", "straightness factor", Unit.ONE)
          .where("λ_{rel}", "relative slenderness", Unit.ONE)
          .as("0.5*(1 + β_c*(λ_{rel} - 0.3) + λ_{rel}^2)")
          .source(EC5);

  static final Formula EUROPEAN =
      Formula.define("k_c")
          .meaning("part of the compression strength that buckling leaves")
          .where("k", "factor of instability", Unit.ONE)
          .where("λ_{rel}", "relative slenderness", Unit.ONE)
          .as("1/(k + sqrt(k^2 - λ_{rel}^2))")
          .source(EC5);

  static final Formula AMERICAN_CRITICAL =
      Formula.define("F_{cE}")
          .meaning("critical buckling stress")
          .unit(Unit.MPA)
          .where("E_{min}", "modulus for stability, E_05/1.66", Unit.MPA)
          .where("l_{ef}", "buckling length", Unit.MM)
          .where("h", "depth in the plane of buckling", Unit.MM)
          .as("0.822*E_{min}/(l_{ef}/h)^2")
          .source(NDS);

  static final Formula AMERICAN =
      Formula.define("C_P")
          .meaning("part of the compression strength that buckling leaves")
          .where("F_{cE}", "critical buckling stress", Unit.MPA)
          .where("F_c", "compression strength", Unit.MPA)
          .where("c", "factor for sawn timber", Unit.ONE)
          .as("(1 + F_{cE}/F_c)/(2*c)" + " - sqrt(((1 + F_{cE}/F_c)/(2*c))^2 - F_{cE}/F_c/c)")
          .source(NDS);

  private static final double SAFETY_OF_MODULUS = 1.66;
  private static final double STOCKY = 0.3;

  private Column() {}

  /** Part of the strength kept under partial factors. */
  static double european(Pad pad, double length, double h, double fc0k, double e05) {
    double slenderness = pad.take(SLENDERNESS, length, h, fc0k, e05);
    if (slenderness <= STOCKY) {
      pad.remark("λ_rel ≤ 0.3: the member is stocky, k_c = 1.");
      return 1;
    }
    double k = pad.take(EUROPEAN_K, BETA_C_SOLID, slenderness);
    return pad.take(EUROPEAN, k, slenderness);
  }

  /** Part of the strength kept under allowable stresses. */
  static double american(Pad pad, double length, double h, double fc, double e05) {
    double critical = pad.take(AMERICAN_CRITICAL, e05 / SAFETY_OF_MODULUS, length, h);
    return pad.take(AMERICAN, critical, fc, C_SAWN);
  }
}
