package org.stoutwork.joint.tenon;

import org.stoutwork.fastener.Documents;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The post torn across its grain, sheared off at its end, or the cheeks pulled apart. */
public final class Splitting {

  private static final Formula F90 =
      Formula.define("F_{90,Rk}")
          .meaning("characteristic force across the grain that splits the post")
          .unit(Unit.N)
          .where("b", "width of post that holds", Unit.MM)
          .where("h_e", "distance from the loaded edge to the far end of the joint", Unit.MM)
          .where("h_p", "post depth", Unit.MM)
          .fitted("14*b*sqrt(h_e/(1 - h_e/h_p))")
          .source(Documents.ec5("8.1.4 (8.4), w = 1; softwood tests, extrapolated to hardwood"));

  private static final Formula F90_DESIGN =
      Formula.define("F_{90,Rd}")
          .meaning("design force across the grain")
          .unit(Unit.N)
          .where("F_{90,Rk}", "characteristic", Unit.N)
          .where("k_mod", "duration and moisture", Unit.ONE)
          .where("γ_M", "partial factor", Unit.ONE)
          .as("k_mod*F_{90,Rk}/γ_M")
          .source(Documents.ec5("2.4.3"));

  private static final Formula NDS =
      Formula.define("V_r")
          .meaning("allowable shear of the post at the joint, twice for both sides of it")
          .unit(Unit.N)
          .where("F_v", "allowable shear stress", Unit.MPA)
          .where("b", "width of post that holds", Unit.MM)
          .where("h_e", "distance from the loaded edge to the far end of the joint", Unit.MM)
          .where("h_p", "post depth", Unit.MM)
          .as("2*2/3*F_v*b*h_e*(h_e/h_p)^2")
          .source(Documents.nds("3.4.3.3 (3.4-6), joint near the end; taken everywhere"));

  private static final Formula HORN_AREA =
      Formula.define("A_h")
          .meaning("three planes on which the post's end shears off")
          .unit(Unit.MM2)
          .where("l", "mortise depth", Unit.MM)
          .where("t", "mortise width", Unit.MM)
          .where("a_e", "wood beyond the mortise", Unit.MM)
          .as("(2*l + t)*a_e")
          .source(Source.derived("geometry"));

  private static final Formula GROOVED_AREA =
      Formula.define("A_h")
          .meaning("three planes on which the post's end shears off, less the groove of the haunch")
          .unit(Unit.MM2)
          .where("l", "mortise depth", Unit.MM)
          .where("t", "mortise width", Unit.MM)
          .where("a_e", "wood beyond the mortise", Unit.MM)
          .where("l_h", "depth of the haunch", Unit.MM)
          .where("h_h", "height of the haunch", Unit.MM)
          .as("(2*l + t)*a_e - 2*l_h*min(h_h, a_e)")
          .source(Source.derived("geometry"));

  private static final Formula HORN =
      Formula.define("F_h")
          .meaning("force that shears off the post's end")
          .unit(Unit.N)
          .where("f_v", "shear strength", Unit.MPA)
          .where("A_h", "sheared area", Unit.MM2)
          .as("f_v*A_h")
          .source(Source.derived("statics, shear spread evenly"));

  private static final Formula CHEEKS =
      Formula.define("F_t")
          .meaning("force that pulls the cheeks apart across the grain")
          .unit(Unit.N)
          .where("k_vol", "size factor, 1 for solid timber", Unit.ONE)
          .where("f_t90", "tension strength across the grain", Unit.MPA)
          .where("c", "cheek thickness", Unit.MM)
          .where("h", "mortise height", Unit.MM)
          .as("k_vol*f_t90*c*(h + 2*c)")
          .source(Source.derived("statics: stressed height grows by the cheek on either side"));

  private static final Formula OPEN_CHEEKS =
      Formula.define("F_t")
          .meaning("force that pulls the cheeks of an open mortise apart across the grain")
          .unit(Unit.N)
          .where("k_vol", "size factor, 1 for solid timber", Unit.ONE)
          .where("f_t90", "tension strength across the grain", Unit.MPA)
          .where("c", "cheek thickness", Unit.MM)
          .where("h", "mortise height", Unit.MM)
          .as("k_vol*f_t90*c*(h + c)")
          .source(Source.derived("statics: stressed height grows by the cheek below only"));

  private static final Formula STRESS =
      Formula.define("σ_{t,90}")
          .meaning("tension across the grain")
          .unit(Unit.MPA)
          .where("F", "force", Unit.N)
          .where("b", "width", Unit.MM)
          .where("l", "length", Unit.MM)
          .as("F/(b*l)")
          .source(Documents.ec5("6.1.3, 6.4.3"));

  private static final Formula GLUE_PULL =
      Formula.define("T_glue")
          .meaning("pull that shears the glued cheeks")
          .unit(Unit.N)
          .where("f_g", "strength of the glue line", Unit.MPA)
          .where("A_g", "area of all cheeks", Unit.MM2)
          .as("f_g*A_g")
          .source(Source.derived("statics"));

  /** What is cut out of a tenon where it may tear. */
  public enum Cut {
    /** Holes of pegs, through its cheeks. */
    PEGS(
        "pull that breaks the tenon beside its peg holes",
        "tenon height",
        "height taken by peg holes",
        "thickness of all tenons"),
    /** Saw kerfs for wedges that are driven into its end. */
    KERFS(
        "pull that breaks the tenon beside its kerfs",
        "tenon height",
        "height taken by kerfs",
        "thickness of all tenons"),
    /** The slot of a loose wedge, from its upper to its lower edge. */
    LOOSE_WEDGE(
        "pull that breaks the tenon beside the slot of its wedge",
        "tenon thickness",
        "width of the wedge",
        "tenon height");

    private final Formula left;

    Cut(String pull, String whole, String taken, String other) {
      left =
          Formula.define("T_net")
              .meaning(pull)
              .unit(Unit.N)
              .where("f_t", "tension strength along the grain", Unit.MPA)
              .where("a", whole, Unit.MM)
              .where("d", taken, Unit.MM)
              .where("b", other, Unit.MM)
              .as("f_t*(a - d)*b")
              .source(Source.derived("statics"));
    }
  }

  private Splitting() {}

  /** Characteristic splitting force, N. */
  public static double force(Pad pad, double b, double he, double post) {
    return pad.take(F90, b, he, post);
  }

  /** Splitting force in the family's form at design level, N. */
  public static double force(
      Pad pad, StrengthFamily family, double fv, double b, double he, double post) {
    if (family instanceof StrengthFamily.PartialFactors p) {
      double characteristic = force(pad, b, he, post);
      return pad.take(F90_DESIGN, characteristic, p.kMod(), p.gammaM());
    }
    return pad.take(NDS, fv, b, he, post);
  }

  /** Area on which the post's end shears off, mm². */
  public static double hornArea(Pad pad, double l, double t, double beyond) {
    return pad.take(HORN_AREA, l, t, beyond);
  }

  /** Force that shears off the post's end, into which the groove of a haunch is cut, N. */
  public static double groovedHorn(
      Pad pad, double l, double t, double beyond, double lh, double hh, double fv) {
    return pad.take(HORN, fv, pad.take(GROOVED_AREA, l, t, beyond, lh, hh));
  }

  /** Force that shears off the post's end, N. */
  public static double horn(Pad pad, double l, double t, double beyond, double fv) {
    return pad.take(HORN, fv, hornArea(pad, l, t, beyond));
  }

  /** Force that pulls the cheeks of a mortise apart that is open at the post's end, N. */
  public static double openCheeks(Pad pad, double ft90, double cheek, double h) {
    return pad.take(OPEN_CHEEKS, 1, ft90, cheek, h);
  }

  /** Force that pulls the cheeks apart, N. */
  public static double cheeks(Pad pad, double ft90, double cheek, double h) {
    return pad.take(CHEEKS, 1, ft90, cheek, h);
  }

  /** Tension across the grain, MPa. */
  public static double stress(Pad pad, double force, double b, double l) {
    return pad.take(STRESS, force, b, l);
  }

  /**
   * Pull that breaks the tenon beside what is cut out of it, N.
   *
   * @param ft tension strength along the grain, MPa
   * @param whole size of the tenon in the direction in which the cut takes some of it, mm
   * @param taken by the cut, mm
   * @param other size of the tenon, mm
   */
  public static double netTension(
      Pad pad, Cut cut, double ft, double whole, double taken, double other) {
    return pad.take(cut.left, ft, whole, taken, other);
  }

  /** Pull that shears the glued cheeks, N. */
  public static double gluePull(Pad pad, double fg, double area) {
    return pad.take(GLUE_PULL, fg, area);
  }
}
