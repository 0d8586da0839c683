package org.stoutwork.joint.tenon;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Rotational stiffness of a tenon in the plane of the frame: a rule fitted to linear-elastic solid
 * models of tenon joints. The spring stands at the shoulder, between the rail and a rigid arm of
 * half the post's depth to the post's centre line; it holds everything the beams do not know.
 *
 * <p>Fitted for t from 0.3 to 0.5 of the rail's thickness, h at least half the rail's depth, l at
 * least 28 mm. Scatter factor of the fit 1.11 for the cheeks, 1.14 for the shoulder, 1.08 dry.
 */
public final class TenonSpring {

  /** Depth of cheek beyond which the shear no longer spreads, mm. */
  public static final double CHEEK_LIMIT = 8;

  /** Where the fitted rule comes from. */
  public static final Source RULE =
      Source.derived(
          "fit to linear-elastic solid models of 44 tenon joints, checked on 16 drawn later");

  private static final Formula CHEEK_DEPTH =
      Formula.define("c_s")
          .meaning("depth of cheek that shears")
          .unit(Unit.MM)
          .where("c", "cheek thickness", Unit.MM)
          .where("c_max", "depth to which the shear spreads", Unit.MM)
          .as("min(c, c_max)")
          .source(RULE);

  private static final Formula SLIP =
      Formula.define("k_s")
          .meaning("shear stiffness of glue, half tenon and cheek per area")
          .unit(Unit.N_PER_MM3)
          .where("k_g", "shear stiffness of the glue line per area", Unit.N_PER_MM3)
          .where("t", "tenon thickness", Unit.MM)
          .where("G_LT", "shear modulus of the rail", Unit.MPA)
          .where("c_s", "depth of cheek that shears", Unit.MM)
          .where("G_RT", "rolling shear modulus of the post", Unit.MPA)
          .as("1/(1/k_g + t/(6*G_LT) + c_s/(3*G_RT))")
          .source(RULE);

  private static final Formula POLAR =
      Formula.define("J_p")
          .meaning("polar moment of the two glued cheeks about their middle")
          .unit(Unit.MM4)
          .where("h", "tenon height", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("2*h*l*(h^2 + l^2)/12")
          .source(Source.derived("statics"));

  private static final Formula CHEEKS =
      Formula.define("K_ck")
          .meaning("rotational stiffness of glued cheeks with the tenon root")
          .unit(Unit.N_MM_PER_RAD)
          .where("n", "number of tenons", Unit.ONE)
          .where("k_s", "shear stiffness per area", Unit.N_PER_MM3)
          .where("J_p", "polar moment of the cheeks", Unit.MM4)
          .where("E_L", "modulus of the rail along the grain", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("b_r", "rail thickness", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("n/(0.65/(k_s*J_p) + 21.6/(E_L*sqrt(t*b_r)*h^2))")
          .source(RULE);

  private static final Formula DRY =
      Formula.define("K_dry")
          .meaning("rotational stiffness of a dry tenon that bears on its edges")
          .unit(Unit.N_MM_PER_RAD)
          .where("n", "number of tenons", Unit.ONE)
          .where("t", "tenon thickness", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .where("E_L", "modulus along the grain", Unit.MPA)
          .where("E_90", "modulus of the rail along its depth", Unit.MPA)
          .as("n*t*l^2*sqrt(E_L*E_90)/20")
          .source(RULE);

  private static final Formula FREE =
      Formula.define("φ_0")
          .meaning("free rotation to either side from the middle")
          .unit(Unit.RAD)
          .where("g", "total play of the tenon", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("g/l")
          .source(RULE);

  private TenonSpring() {}

  /**
   * Shear stiffness of glue line, tenon and cheek per area, N/mm³.
   *
   * @param kg glue line per area, N/mm³; 0 for no glue
   */
  public static double slip(Pad pad, double kg, double t, double gLT, double cheek, double gRT) {
    double cs = pad.take(CHEEK_DEPTH, cheek, CHEEK_LIMIT);
    return pad.take(SLIP, kg, t, gLT, cs, gRT);
  }

  /** Stiffness of the glued cheeks in series with the tenon's root, N·mm/rad. */
  public static double cheeks(
      Pad pad, int count, double ks, double h, double t, double l, double eL, double railB) {
    double jp = pad.take(POLAR, h, l);
    return pad.take(CHEEKS, count, ks, jp, eL, t, railB, h);
  }

  /** Stiffness of a dry tenon once its play is used up, N·mm/rad. */
  public static double dry(Pad pad, int count, double t, double l, double eL, double e90) {
    return pad.take(DRY, count, t, l, eL, e90);
  }

  /** Free rotation to either side of a tenon with play, rad. */
  public static double freeRotation(Pad pad, double play, double l) {
    return pad.take(FREE, play, l);
  }
}
