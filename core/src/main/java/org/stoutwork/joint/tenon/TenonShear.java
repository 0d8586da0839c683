package org.stoutwork.joint.tenon;

import org.stoutwork.fastener.Documents;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Shear and bending of a tenon at its shoulder, where the shoulder acts as a notch. */
public final class TenonShear {

  /** k_n of solid timber. */
  public static final double SOLID = 5;

  /** k_n of glued laminated timber. */
  public static final double GLULAM = 6.5;

  /** k_n of laminated veneer lumber. */
  public static final double LVL = 4.5;

  private static final Formula ALPHA =
      Formula.define("α")
          .meaning("share of the depth that is left")
          .where("h", "tenon height", Unit.MM)
          .where("s", "shoulder on the loaded side", Unit.MM)
          .as("h/(h + s)")
          .source(Documents.ec5("6.5.2"));

  private static final Formula NOTCH =
      Formula.define("k_v")
          .meaning("notch factor of a square notch")
          .where("k_n", "5 solid timber, 6.5 glulam, 4.5 LVL", Unit.ONE)
          .where("H", "depth above the notch", Unit.MM)
          .where("α", "share of the depth that is left", Unit.ONE)
          .where("x", "distance from notch to reaction", Unit.MM)
          .fitted("min(1, k_n/(sqrt(H)*(sqrt(α*(1 - α)) + 0.8*(x/H)*sqrt(1/α - α^2))))")
          .source(
              Source.published(
                  "LVL Handbook Europe (2025)", "eq. 4.46 to 4.48, as EN 1995-1-1 6.5.2"));

  private static final Formula SLOPED_NOTCH =
      Formula.define("k_v")
          .meaning("notch factor of a sloping notch")
          .where("k_n", "5 solid timber, 6.5 glulam, 4.5 LVL", Unit.ONE)
          .where("i", "slope of the notch", Unit.ONE)
          .where("H", "depth above the notch", Unit.MM)
          .where("α", "share of the depth that is left", Unit.ONE)
          .where("x", "distance from notch to reaction", Unit.MM)
          .fitted(
              "min(1, k_n*(1 + 1.1*i^1.5/sqrt(H))"
                  + "/(sqrt(H)*(sqrt(α*(1 - α)) + 0.8*(x/H)*sqrt(1/α - α^2))))")
          .source(Source.published("LVL Handbook Europe (2025)", "eq. 4.46 to 4.48"));

  private static final Formula STRESS =
      Formula.define("τ")
          .meaning("shear stress in the tenon")
          .unit(Unit.MPA)
          .where("V", "shear force", Unit.N)
          .where("k_cr", "share of the width left by cracks", Unit.ONE)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("1.5*V/(k_cr*t*h)")
          .source(Documents.ec5("6.1.7"));

  private static final Formula CAPACITY_EC5 =
      Formula.define("V_R")
          .meaning("shear capacity of the tenon at the shoulder")
          .unit(Unit.N)
          .where("k_v", "notch factor", Unit.ONE)
          .where("f_v", "shear strength", Unit.MPA)
          .where("k_cr", "share of the width left by cracks", Unit.ONE)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("k_v*f_v*k_cr*t*h/1.5")
          .source(Documents.ec5("6.5.2 (6.60)"));

  private static final Formula CAPACITY_NDS =
      Formula.define("V_r")
          .meaning("allowable shear of the tenon at the shoulder")
          .unit(Unit.N)
          .where("F_v", "allowable shear stress", Unit.MPA)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("s", "shoulder on the loaded side", Unit.MM)
          .as("2/3*F_v*t*h*(h/(h + s))^2")
          .source(Documents.nds("3.4.3.2 (3.4-3), member notched on the tension face"));

  private static final Formula ROOT_MOMENT =
      Formula.define("M")
          .meaning("moment at the root of the tenon from the reaction in its middle")
          .unit(Unit.N_MM)
          .where("V", "shear force", Unit.N)
          .where("e", "distance of the reaction from the shoulder", Unit.MM)
          .as("V*e")
          .source(Source.derived("statics"));

  private static final Formula MODULUS =
      Formula.define("Z")
          .meaning("section modulus of the tenon")
          .unit(Unit.MM3)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("t*h^2/6")
          .source(Source.derived("geometry"));

  private static final Formula ROOT_CAPACITY =
      Formula.define("M_R")
          .meaning("moment capacity of the tenon's root")
          .unit(Unit.N_MM)
          .where("f_m", "bending strength", Unit.MPA)
          .where("Z", "section modulus", Unit.MM3)
          .as("f_m*Z")
          .source(Source.derived("beam theory"));

  private static final Formula ROOT_STRESS =
      Formula.define("σ")
          .meaning("bending stress at the tenon's root")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("Z", "section modulus", Unit.MM3)
          .as("M/Z")
          .source(Source.derived("beam theory"));

  private TenonShear() {}

  /** Share of the depth that the shoulder leaves. */
  public static double share(Pad pad, double h, double s) {
    return pad.take(ALPHA, h, s);
  }

  /** Notch factor of EN 1995-1-1; 1 without a shoulder. */
  public static double notch(Pad pad, double h, double s, double x, double kn) {
    if (s == 0) {
      return 1;
    }
    return pad.take(NOTCH, kn, h + s, share(pad, h, s), x);
  }

  /** Notch factor with a slope of 1 : i. */
  public static double notch(Pad pad, double h, double s, double x, double kn, double slope) {
    return pad.take(SLOPED_NOTCH, kn, slope, h + s, share(pad, h, s), x);
  }

  /** Shear stress, MPa. */
  public static double stress(Pad pad, double v, double kcr, double t, double h) {
    return pad.take(STRESS, v, kcr, t, h);
  }

  /** Shear capacity by EN 1995-1-1, N. */
  public static double capacity(Pad pad, double kv, double fv, double kcr, double t, double h) {
    return pad.take(CAPACITY_EC5, kv, fv, kcr, t, h);
  }

  /** Shear capacity in the family's form, N. */
  public static double capacity(
      Pad pad, StrengthFamily family, double fv, double t, double h, double s, double l) {
    if (family instanceof StrengthFamily.Allowable) {
      return pad.take(CAPACITY_NDS, fv, t, h, s);
    }
    double kv = notch(pad, h, s, l / 2, SOLID);
    return capacity(pad, kv, fv, family.crackFactor(), t, h);
  }

  /** Moment at the root, N·mm. */
  public static double rootMoment(Pad pad, double v, double e) {
    return pad.take(ROOT_MOMENT, v, e);
  }

  /** Section modulus of the tenon, mm³. */
  public static double modulus(Pad pad, double t, double h) {
    return pad.take(MODULUS, t, h);
  }

  /** Bending stress at the root, MPa. */
  public static double rootStress(Pad pad, double moment, double modulus) {
    return pad.take(ROOT_STRESS, moment, modulus);
  }

  /** Moment capacity of the root, N·mm. */
  public static double rootCapacity(Pad pad, double fm, double modulus) {
    return pad.take(ROOT_CAPACITY, fm, modulus);
  }
}
