package org.stoutwork.joint.tenon;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Wedges: whether they hold by friction, what they do to the tenon, what holds them. */
public final class Wedging {

  /** Coefficient of friction to hold by: the least kinetic value measured, wood on wood. */
  public static final double HOLDING_FRICTION = 0.28;

  /** How many times the friction angle must hold the wedge, for moisture cycles. */
  public static final double SAFE_LOCK = 3;

  private static final Source FRICTION_TESTS =
      Source.published(
          "Villar-García and others, International Agrophysics 34 (2020) 65",
          "friction of sweet chestnut: kinetic 0.28 to 0.39");

  private static final Formula ANGLE =
      Formula.define("φ")
          .meaning("friction angle")
          .unit(Unit.RAD)
          .where("μ", "coefficient of friction", Unit.ONE)
          .as("atan(μ)")
          .source(FRICTION_TESTS);

  private static final Formula LOCK =
      Formula.define("n_φ")
          .meaning("how many times friction holds the wedge")
          .where("φ", "friction angle", Unit.RAD)
          .where("θ", "included angle of the wedge", Unit.RAD)
          .as("2*φ/θ")
          .source(Source.derived("statics: a wedge that rubs on both faces holds below 2φ"));

  private static final Formula STRAIN =
      Formula.define("ε")
          .meaning("bending strain of a spread leaf of the tenon")
          .where("a", "thickness of the leaf", Unit.MM)
          .where("Δ", "spread at its tip", Unit.MM)
          .where("l_k", "length of the kerf", Unit.MM)
          .as("1.5*a*Δ/l_k^2")
          .source(Source.derived("beam theory: cantilever"));

  private static final Formula STRAIN_LIMIT =
      Formula.define("ε_el")
          .meaning("strain at which the leaf breaks, bending taken as linear")
          .where("f_m", "bending strength: mean of clear wood, or of the class", Unit.MPA)
          .where("E", "modulus", Unit.MPA)
          .as("f_m/E")
          .source(Source.derived("Hooke"));

  private static final Formula WITHDRAWAL =
      Formula.define("F")
          .meaning("pull that crushes the flared tenon out of its mortise")
          .unit(Unit.N)
          .where("f_c90", "compression strength across the grain", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("l_w", "length of wedge in contact", Unit.MM)
          .where("β", "flare of the mortise on each side", Unit.RAD)
          .where("φ", "friction angle", Unit.RAD)
          .as("2*f_c90*t*l_w*tan(β + φ)")
          .source(Source.derived("statics"));

  private static final Formula FLARE_SHEAR =
      Formula.define("F_v")
          .meaning("pull that shears the flared part off")
          .unit(Unit.N)
          .where("f_v", "shear strength", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("l_w", "length of wedge in contact", Unit.MM)
          .as("f_v*2*t*l_w")
          .source(Source.derived("statics"));

  private static final Formula KEY_BENDING =
      Formula.define("F")
          .meaning("pull at which a loose wedge breaks between tenon sides, as a short beam")
          .unit(Unit.N)
          .where("f_m", "bending strength of the wedge", Unit.MPA)
          .where("w", "wedge width, across the tenon", Unit.MM)
          .where("a", "wedge thickness, along the tenon", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("8*f_m*w*a^2/(6*h)")
          .source(Source.derived("beam theory: evenly loaded over the tenon's height"));

  private static final Formula ONE_FACE_LOCK =
      Formula.define("n_φ")
          .meaning("how many times friction holds a wedge with one sloping face")
          .where("φ", "friction angle", Unit.RAD)
          .where("θ", "slope", Unit.RAD)
          .as("2*φ/θ")
          .source(Source.derived("statics: both faces rub, one slopes"));

  private Wedging() {}

  /** Friction angle, rad. */
  public static double frictionAngle(Pad pad, double friction) {
    return pad.take(ANGLE, friction);
  }

  /** How many times friction holds a wedge of the given included angle in degrees. */
  public static double lock(Pad pad, double friction, double degrees) {
    return pad.take(LOCK, frictionAngle(pad, friction), Math.toRadians(degrees));
  }

  /** How many times friction holds a loose wedge with one sloping face. */
  public static double looseLock(Pad pad, double friction, double degrees) {
    return pad.take(ONE_FACE_LOCK, frictionAngle(pad, friction), Math.toRadians(degrees));
  }

  /** Strain of a spread leaf. */
  public static double strain(Pad pad, double leaf, double spread, double kerf) {
    return pad.take(STRAIN, leaf, spread, kerf);
  }

  /** Strain at which the leaf breaks. */
  public static double strainLimit(Pad pad, double fm, double modulus) {
    return pad.take(STRAIN_LIMIT, fm, modulus);
  }

  /** Pull that crushes the flared tenon out, N. */
  public static double withdrawal(
      Pad pad, double fc90, double t, double contact, double flare, double friction) {
    double phi = frictionAngle(pad, friction);
    return pad.take(WITHDRAWAL, fc90, t, contact, Math.toRadians(flare), phi);
  }

  /** Pull that shears the flared part off, N. */
  public static double flareShear(Pad pad, double fv, double t, double contact) {
    return pad.take(FLARE_SHEAR, fv, t, contact);
  }

  /** Pull that breaks a loose wedge, N. */
  public static double keyBending(Pad pad, double fm, double width, double thickness, double h) {
    return pad.take(KEY_BENDING, fm, width, thickness, h);
  }
}
