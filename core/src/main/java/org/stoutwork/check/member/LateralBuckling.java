package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.section.Rectangle;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * How much of its bending strength a deep thin rectangle keeps, which may buckle laterally while it
 * is bent about its stronger axis: EN 1995-1-1 6.3.3 and NDS 3.3.3, both from memory. Lengths in
 * mm, stresses and moduli in MPa, all above 0. A rectangle counts with its longer side as its
 * depth, whichever way it lies; a square one does not buckle laterally.
 */
public final class LateralBuckling {

  private static final Source TABLE = Source.fromMemory("EN 1995-1-1", "6.3.3, Table 6.1");
  private static final Source EC5 = Source.fromMemory("EN 1995-1-1", "6.3.3, eq. 6.30");
  private static final Source EC5_FACTOR = Source.fromMemory("EN 1995-1-1", "6.3.3, eq. 6.34");
  private static final Source NDS = Source.fromMemory("NDS", "3.3.3");

  private static final Formula LENGTH =
      Formula.define("l_{ef,m}")
          .meaning("length for lateral buckling, bent alike all along")
          .unit(Unit.MM)
          .where("l", "length between places that keep it from turning about its axis", Unit.MM)
          .as("1.0*l")
          .source(TABLE);

  private static final Formula LENGTH_ON_EDGE =
      Formula.define("l_{ef,m}")
          .meaning("length for lateral buckling, bent alike all along, loads on the pressed edge")
          .unit(Unit.MM)
          .where("l", "length between places that keep it from turning about its axis", Unit.MM)
          .where("h", "depth", Unit.MM)
          .as("1.0*l + 2*h")
          .source(TABLE);

  private static final Formula CRITICAL_SOFTWOOD =
      Formula.define("σ_{m,crit}")
          .meaning("bending stress at which a perfect member of solid softwood buckles laterally")
          .unit(Unit.MPA)
          .where("b", "thickness", Unit.MM)
          .where("E_{05}", "5 % modulus", Unit.MPA)
          .where("h", "depth", Unit.MM)
          .where("l_{ef,m}", "length for lateral buckling", Unit.MM)
          .as("0.78*b^2*E_{05}/(h*l_{ef,m})")
          .source(Source.fromMemory("EN 1995-1-1", "6.3.3, eq. 6.32"));

  private static final Formula CRITICAL =
      Formula.define("σ_{m,crit}")
          .meaning("bending stress at which a perfect member buckles laterally")
          .unit(Unit.MPA)
          .where("E_{05}", "5 % modulus", Unit.MPA)
          .where("I_2", "second moment about the weaker axis", Unit.MM4)
          .where("G_{05}", "5 % shear modulus", Unit.MPA)
          .where("I_{tor}", "torsion constant", Unit.MM4)
          .where("l_{ef,m}", "length for lateral buckling", Unit.MM)
          .where("W_1", "section modulus about the stronger axis", Unit.MM3)
          .as("π*sqrt(E_{05}*I_2*G_{05}*I_{tor})/(l_{ef,m}*W_1)")
          .source(Source.fromMemory("EN 1995-1-1", "6.3.3, eq. 6.31"));

  private static final Formula RELATIVE =
      Formula.define("λ_{rel,m}")
          .meaning("relative slenderness for lateral buckling")
          .where("f_{m,k}", "characteristic bending strength", Unit.MPA)
          .where("σ_{m,crit}", "critical stress", Unit.MPA)
          .as("sqrt(f_{m,k}/σ_{m,crit})")
          .source(EC5);

  private static final Formula EUROPEAN_MIDDLE =
      Formula.define("k_{crit}")
          .meaning(
              "part of the bending strength that lateral buckling leaves, slenderness up to 1.4")
          .where("λ_{rel,m}", "relative slenderness", Unit.ONE)
          .as("1.56 - 0.75*λ_{rel,m}")
          .source(EC5_FACTOR);

  private static final Formula EUROPEAN_SLENDER =
      Formula.define("k_{crit}")
          .meaning(
              "part of the bending strength that lateral buckling leaves, slenderness above 1.4")
          .where("λ_{rel,m}", "relative slenderness", Unit.ONE)
          .as("1/λ_{rel,m}^2")
          .source(EC5_FACTOR);

  private static final Formula AMERICAN_LENGTH =
      Formula.define("l_e")
          .meaning("length for lateral buckling under loads of any kind")
          .unit(Unit.MM)
          .where("l", "length between places that keep it from turning about its axis", Unit.MM)
          .where("h", "depth", Unit.MM)
          .as("min(2.06*l, max(1.63*l + 3*h, 1.84*l))")
          .source(Source.fromMemory("NDS", "Table 3.3.3, note on loads that it does not list"));

  private static final Formula AMERICAN_SLENDERNESS =
      Formula.define("R_B")
          .meaning("slenderness for lateral buckling, no more than 50")
          .where("l_e", "length for lateral buckling", Unit.MM)
          .where("h", "depth", Unit.MM)
          .where("b", "thickness", Unit.MM)
          .as("sqrt(l_e*h/b^2)")
          .source(NDS);

  private static final Formula AMERICAN_CRITICAL =
      Formula.define("F_{bE}")
          .meaning("bending stress at which the member buckles laterally")
          .unit(Unit.MPA)
          .where("E_{min}", "modulus for stability", Unit.MPA)
          .where("R_B", "slenderness", Unit.ONE)
          .as("1.2*E_{min}/R_B^2")
          .source(NDS);

  private static final Formula AMERICAN =
      Formula.define("C_L")
          .meaning("part of the bending strength that lateral buckling leaves")
          .where("F_{bE}", "critical bending stress", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("(1 + F_{bE}/f_m)/1.9 - sqrt(((1 + F_{bE}/f_m)/1.9)^2 - F_{bE}/f_m/0.95)")
          .source(NDS);

  private static final double STOUT = 0.75;
  private static final double SLENDER = 1.4;

  /** Depth over thickness up to which no support against lateral buckling is asked. */
  private static final double STOUT_SHAPE = 2;

  private static final double MOST_SLENDER = 50;

  private LateralBuckling() {}

  /**
   * Length over which a member buckles laterally under partial factors, mm. The moment is taken as
   * the same all along, which is the careful side whatever its course.
   *
   * @param length between the places that keep the member from turning about its axis, mm
   * @param h depth, mm
   * @param onEdge whether loads may stand on the pressed edge
   */
  public static double europeanLength(Pad pad, double length, double h, boolean onEdge) {
    return onEdge ? pad.take(LENGTH_ON_EDGE, length, h) : pad.take(LENGTH, length);
  }

  /**
   * What is left under partial factors: k_crit is 1 up to a relative slenderness of 0.75.
   *
   * @param section gross
   * @param length over which the member buckles laterally, mm
   * @param softwood whether it is solid softwood, which has a rule of its own
   * @param fmk characteristic bending strength, MPa
   * @param e05 5 % modulus along the grain, MPa
   * @param g05 5 % shear modulus, MPa; solid softwood does not ask it
   */
  public static Lateral european(
      Pad pad,
      Rectangle section,
      double length,
      boolean softwood,
      double fmk,
      double e05,
      double g05) {
    Rectangle r = upright(section);
    if (r.h() == r.b()) {
      return Lateral.NONE;
    }
    double critical =
        softwood
            ? pad.take(CRITICAL_SOFTWOOD, r.b(), e05, r.h(), length)
            : pad.take(
                CRITICAL,
                e05,
                r.turned().secondMoment(),
                g05,
                r.torsionConstant(),
                length,
                r.sectionModulus());
    double slenderness = pad.take(RELATIVE, fmk, critical);
    if (slenderness <= STOUT) {
      pad.remark("λ_rel,m ≤ 0.75: the member does not buckle laterally, k_crit = 1.");
      return new Lateral(1, critical, false);
    }
    Formula formula = slenderness <= SLENDER ? EUROPEAN_MIDDLE : EUROPEAN_SLENDER;
    return new Lateral(pad.take(formula, slenderness), critical, false);
  }

  /**
   * Length over which a member buckles laterally under allowable stresses, whatever its loads, mm.
   *
   * @param length between the places that keep the member from turning about its axis, mm
   * @param h depth, mm
   */
  public static double americanLength(Pad pad, double length, double h) {
    return pad.take(AMERICAN_LENGTH, length, h);
  }

  /**
   * What is left under allowable stresses: C_L is 1 for depths of up to twice the thickness, whose
   * critical stress counts in bending both ways all the same. What the code grants to deeper
   * members whose ends or edges are held is not counted.
   *
   * @param section gross
   * @param length over which the member buckles laterally, mm
   * @param eMin modulus for stability, MPa
   * @param fm allowable bending stress of a member that does not buckle laterally, MPa
   */
  public static Lateral american(
      Pad pad, Rectangle section, double length, double eMin, double fm) {
    Rectangle r = upright(section);
    if (r.h() == r.b()) {
      return Lateral.NONE;
    }
    double slenderness = pad.take(AMERICAN_SLENDERNESS, length, r.h(), r.b());
    double critical = pad.take(AMERICAN_CRITICAL, eMin, slenderness);
    if (r.h() <= STOUT_SHAPE * r.b()) {
      pad.remark(
          "No deeper than twice its thickness, the member does not buckle laterally: C_L = 1.");
      return new Lateral(1, critical, slenderness > MOST_SLENDER);
    }
    double factor = pad.take(AMERICAN, critical, fm);
    return new Lateral(factor, critical, slenderness > MOST_SLENDER);
  }

  /** The section with its longer side as its depth. */
  private static Rectangle upright(Rectangle r) {
    return r.h() >= r.b() ? r : r.turned();
  }
}
