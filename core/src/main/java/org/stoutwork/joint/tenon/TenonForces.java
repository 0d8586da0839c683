package org.stoutwork.joint.tenon;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Springs of a tenon along its other axes: pulled, and pushed across. */
public final class TenonForces {

  private static final Formula SLIP_FULL =
      Formula.define("k_s")
          .meaning("shear stiffness per area, the whole cheek rolling")
          .unit(Unit.N_PER_MM3)
          .where("k_g", "shear stiffness of the glue line per area", Unit.N_PER_MM3)
          .where("t", "tenon thickness", Unit.MM)
          .where("G_LT", "shear modulus of the rail", Unit.MPA)
          .where("c", "cheek thickness", Unit.MM)
          .where("G_RT", "rolling shear modulus of the post", Unit.MPA)
          .as("1/(1/k_g + t/(6*G_LT) + c/(3*G_RT))")
          .source(Source.derived("elasticity: shear falls off linearly through tenon and cheek"));

  private static final Formula PULL =
      Formula.define("k_T")
          .meaning("stiffness of glued tenons pulled along the rail")
          .unit(Unit.N_PER_MM)
          .where("n", "number of tenons", Unit.ONE)
          .where("k_s", "shear stiffness per area", Unit.N_PER_MM3)
          .where("h", "tenon height", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .where("E_L", "modulus of the rail along the grain", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .as("n/(1/(k_s*2*h*l) + l/(3*E_L*t*h))")
          .source(Source.derived("springs in series: glued cheeks and the tenon's own stretch"));

  private static final Formula SHEAR =
      Formula.define("k_V")
          .meaning("stiffness of glued tenons pushed along the post")
          .unit(Unit.N_PER_MM)
          .where("n", "number of tenons", Unit.ONE)
          .where("h", "tenon height", Unit.MM)
          .fitted("n*1000*h")
          .source(Source.derived("fit to 11 linear-elastic solid models: 885 to 1430 times h"));

  private TenonForces() {}

  /** Stiffness of glued tenons pulled along the rail, N/mm. */
  public static double pulled(
      Pad pad,
      int count,
      double kg,
      double h,
      double t,
      double l,
      double gLT,
      double cheek,
      double gRT,
      double eL) {
    double ks = pad.take(SLIP_FULL, kg, t, gLT, cheek, gRT);
    return pad.take(PULL, count, ks, h, l, eL, t);
  }

  /** Stiffness of glued tenons pushed along the post, N/mm. */
  public static double pushed(Pad pad, int count, double h) {
    return pad.take(SHEAR, count, h);
  }
}
