package org.stoutwork.joint.glue;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Rectangular glue lines that turn in their own plane about their middle or about a corner beyond
 * them.
 */
public final class GlueTurning {

  private static final Source PLASTIC =
      Source.derived("statics: the whole line at its strength, slip growing from the centre");
  private static final Source ELASTIC =
      Source.derived(
          "elasticity: rectangular line twisted in its plane, largest stress at corners");

  private static final Formula ARM_SUM =
      Formula.define("Q")
          .meaning("sum of the distances from a corner over a rectangle")
          .unit(Unit.MM3)
          .where("a", "one side", Unit.MM)
          .where("b", "other side", Unit.MM)
          .where("r", "diagonal", Unit.MM)
          .as("(2*a*b*r + a^3*ln((b + r)/a) + b^3*ln((a + r)/b))/6")
          .source(Source.derived("integral over a rectangle"));

  private static final Formula DIAGONAL =
      Formula.define("r")
          .meaning("diagonal")
          .unit(Unit.MM)
          .where("a", "one side", Unit.MM)
          .where("b", "other side", Unit.MM)
          .as("sqrt(a^2 + b^2)")
          .source(Source.derived("geometry"));

  private static final Formula PUSH_SUM =
      Formula.define("P")
          .meaning("sum of the slip directions along a over a rectangle")
          .unit(Unit.MM2)
          .where("a", "side along the rail", Unit.MM)
          .where("b", "side along the post", Unit.MM)
          .where("r", "diagonal", Unit.MM)
          .as("(a*r + b^2*ln((a + r)/b) - a^2)/2")
          .source(Source.derived("integral over a rectangle"));

  private static final Formula POLAR =
      Formula.define("J_p")
          .meaning("polar moment of the glue faces about their middle")
          .unit(Unit.MM4)
          .where("n", "number of faces", Unit.ONE)
          .where("a", "side along the rail", Unit.MM)
          .where("b", "side along the post", Unit.MM)
          .as("n*a*b*(a^2 + b^2)/12")
          .source(Source.derived("geometry"));

  private static final Formula CORNER =
      Formula.define("τ")
          .meaning("shear stress at the worst corner of the glue line")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("N", "force along a", Unit.N)
          .where("V", "force along b", Unit.N)
          .where("n", "number of faces", Unit.ONE)
          .where("a", "side along the rail", Unit.MM)
          .where("b", "side along the post", Unit.MM)
          .where("J_p", "polar moment", Unit.MM4)
          .as("sqrt((M*b/(2*J_p) + N/(n*a*b))^2 + (M*a/(2*J_p) + V/(n*a*b))^2)")
          .source(ELASTIC);

  private static final Formula ELASTIC_MOMENT =
      Formula.define("M_el")
          .meaning("moment at which the first corner reaches the strength of the line")
          .unit(Unit.N_MM)
          .where("f_g", "strength of the line", Unit.MPA)
          .where("J", "polar moment about the centre of turning", Unit.MM4)
          .where("r_max", "distance of the farthest corner", Unit.MM)
          .as("f_g*J/r_max")
          .source(ELASTIC);

  private static final Formula PLASTIC_MOMENT =
      Formula.define("M_pl")
          .meaning("moment with the whole line at its strength")
          .unit(Unit.N_MM)
          .where("f_g", "strength of the line", Unit.MPA)
          .where("R", "sum of distances from the centre of turning", Unit.MM3)
          .as("f_g*R")
          .source(PLASTIC);

  private static final Formula CENTRED =
      Formula.define("R")
          .meaning("sum of distances from the middle over all faces")
          .unit(Unit.MM3)
          .where("n", "number of faces", Unit.ONE)
          .where("Q", "sum over a quarter of one face", Unit.MM3)
          .as("4*n*Q")
          .source(Source.derived("symmetry"));

  private GlueTurning() {}

  /** Diagonal of a rectangle, mm. */
  public static double diagonal(Pad pad, double a, double b) {
    return pad.take(DIAGONAL, a, b);
  }

  /** Sum of the distances from a corner over a rectangle a × b, mm³. */
  public static double armSum(Pad pad, double a, double b) {
    return a == 0 || b == 0 ? 0 : pad.take(ARM_SUM, a, b, Math.hypot(a, b));
  }

  /** Sum of the slip directions along a over a rectangle a × b, mm². */
  public static double pushSum(Pad pad, double a, double b) {
    return a == 0 || b == 0 ? 0 : pad.take(PUSH_SUM, a, b, Math.hypot(a, b));
  }

  /** Polar moment of n faces about their middle, mm⁴. */
  public static double polar(Pad pad, int faces, double a, double b) {
    return pad.take(POLAR, faces, a, b);
  }

  /** Stress at the worst corner under moment and two forces, all taken adverse, MPa. */
  public static double corner(
      Pad pad, int faces, double a, double b, double moment, double n, double v) {
    double jp = polar(pad, faces, a, b);
    return pad.take(CORNER, Math.abs(moment), Math.abs(n), Math.abs(v), faces, a, b, jp);
  }

  /** Elastic moment, N·mm. */
  public static double elastic(Pad pad, double fg, double polar, double farthest) {
    return pad.take(ELASTIC_MOMENT, fg, polar, farthest);
  }

  /** Plastic moment, N·mm. */
  public static double plastic(Pad pad, double fg, double sumOfDistances) {
    return pad.take(PLASTIC_MOMENT, fg, sumOfDistances);
  }

  /** Plastic moment of n faces turning about their middle, N·mm. */
  public static double plasticCentred(Pad pad, double fg, int faces, double a, double b) {
    double q = armSum(pad, a / 2, b / 2);
    return plastic(pad, fg, pad.take(CENTRED, faces, q));
  }
}
