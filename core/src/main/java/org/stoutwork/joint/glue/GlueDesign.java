package org.stoutwork.joint.glue;

import org.stoutwork.joint.setting.GlueClass;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** From the calculated strength of a glue line to a test mean, a 5 % value and a design value. */
public final class GlueDesign {

  /** Ratio of test mean to plastic moment, red and white oak joints. */
  public static final double TEST_OVER_PLASTIC = 0.9;

  /** The larger coefficient of variation of the two test series. */
  public static final double COV = 0.17;

  private static final Source TESTS =
      Source.derived(
          "calibration to Eckelman, Uysal, Haviarova, BioResources 11(3) 2016, 355 joints of oak");

  private static final Formula MEAN =
      Formula.define("f_{g,mean}")
          .meaning("mean strength of the line as joint tests give it")
          .unit(Unit.MPA)
          .where("η", "test mean over plastic calculation", Unit.ONE)
          .where("f_g", "strength of the line", Unit.MPA)
          .as("η*f_g")
          .source(TESTS);

  private static final Formula LOWER =
      Formula.define("f_{g,k}")
          .meaning("5 % value")
          .unit(Unit.MPA)
          .where("f_{g,mean}", "mean", Unit.MPA)
          .where("V", "coefficient of variation", Unit.ONE)
          .as("f_{g,mean}*(1 - 1.645*V)")
          .source(Source.derived("normal distribution, 5 % fractile"));

  private static final Formula DESIGN_EC5 =
      Formula.define("f_{g,d}")
          .meaning("design value")
          .unit(Unit.MPA)
          .where("f_{g,k}", "5 % value", Unit.MPA)
          .where("k_mod", "duration and moisture", Unit.ONE)
          .where("γ_M", "partial factor of connections", Unit.ONE)
          .as("k_mod*f_{g,k}/γ_M")
          .source(Source.fromMemory("EN 1995-1-1:2004+A1:2008", "2.4.1"));

  private static final Formula DESIGN_US =
      Formula.define("f_{g,allow}")
          .meaning("allowable value")
          .unit(Unit.MPA)
          .where("f_{g,k}", "5 % value", Unit.MPA)
          .where("C_D", "load duration", Unit.ONE)
          .where("div", "divisor for shear", Unit.ONE)
          .as("f_{g,k}*C_D/div")
          .source(Source.fromMemory("ASTM D245", "adjustment of clear-wood values"));

  private static final double POOR = 0.75;

  private static final Formula LOWERED =
      Formula.define("f_{g,p}")
          .meaning("strength of a line on wood that bonds with difficulty")
          .unit(Unit.MPA)
          .where("r_p", "share that is counted", Unit.ONE)
          .where("f_g", "strength of a sound line", Unit.MPA)
          .as("r_p*f_g")
          .source(
              Source.projectDefault(
                  "glued tenons of teak, pulled, held 0.76 of what those of beech let expect (one"
                      + " series); surfaces prepared with care may hold all"));

  /** k_mod of permanent load in service classes 1 and 2, EN 1995-1-1 Table 3.1. */
  private static final double PERMANENT_EC5 = 0.6;

  /** C_D of permanent load, NDS Table 2.3.2. */
  private static final double PERMANENT_US = 0.9;

  private GlueDesign() {}

  /** Mean value as tests give it. */
  public static double mean(Pad pad, double calculated) {
    return pad.take(MEAN, TEST_OVER_PLASTIC, calculated);
  }

  /** Value that one in twenty joints falls short of. */
  public static double lower(Pad pad, double mean, double cov) {
    return pad.take(LOWER, mean, cov);
  }

  /** Design or allowable value from a 5 % value. */
  public static double design(Pad pad, double lower, StrengthFamily family) {
    if (family instanceof StrengthFamily.PartialFactors p) {
      return pad.take(DESIGN_EC5, lower, p.kMod(), p.gammaM());
    }
    StrengthFamily.Allowable a = (StrengthFamily.Allowable) family;
    return pad.take(DESIGN_US, lower, a.loadDuration(), a.divisor());
  }

  /**
   * Design strength of a line between two woods that cross.
   *
   * @param shearMean lower of the two mean shear strengths; 0 if unknown
   * @param shearDesign lower of the two design shear strengths, used if the mean is unknown
   */
  public static double crossed(
      Pad pad, double shearMean, double shearDesign, StrengthFamily family) {
    if (shearMean > 0) {
      return design(pad, lower(pad, mean(pad, GlueLine.crossed(pad, shearMean)), COV), family);
    }
    pad.remark("Mean shear strength unknown: the design shear strength of the wood is used.");
    return mean(pad, GlueLine.crossed(pad, shearDesign));
  }

  /**
   * Strength of a line on wood that bonds with difficulty.
   *
   * @param sound strength of a sound line, MPa
   */
  public static double poor(Pad pad, double sound) {
    return pad.take(LOWERED, POOR, sound);
  }

  /** The family with the factors of permanent load, for glues that give way under lasting load. */
  public static StrengthFamily permanent(StrengthFamily family) {
    if (family instanceof StrengthFamily.PartialFactors p) {
      return new StrengthFamily.PartialFactors(
          Math.min(p.kMod(), PERMANENT_EC5), p.gammaM(), p.gammaM2());
    }
    StrengthFamily.Allowable a = (StrengthFamily.Allowable) family;
    return new StrengthFamily.Allowable(Math.min(a.loadDuration(), PERMANENT_US), a.divisor());
  }

  /**
   * Design strength of the glue itself by its class; a line is never stronger. Written down only
   * where it governs.
   *
   * @param line strength of the line by its wood, MPa
   */
  public static double classLimit(Pad pad, GlueClass grade, StrengthFamily family, double line) {
    double glue = design(Pad.blank(), GlueClass.DRY_SHEAR, family);
    if (glue >= line) {
      return glue;
    }
    pad.given(
        "f_{g,class}",
        "shear strength that the class of the glue asks for",
        GlueClass.DRY_SHEAR,
        Unit.MPA,
        Source.fromMemory(grade.words(), "thin line on beech, dry"));
    return design(pad, GlueClass.DRY_SHEAR, family);
  }
}
