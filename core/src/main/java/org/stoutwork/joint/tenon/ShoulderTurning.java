package org.stoutwork.joint.tenon;

import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The glued cheeks of a shouldered tenon turning about the corner of the rail on the shoulder
 * plane, on the compression side. Tenon edges, against end grain, count nought.
 */
public final class ShoulderTurning {

  private static final Source CORNER =
      Source.derived("statics: cheeks slip about the rail's corner");

  private static final Formula AREA =
      Formula.define("A_g")
          .meaning("area of both cheeks")
          .unit(Unit.MM2)
          .where("h", "tenon height", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("2*h*l")
          .source(Source.derived("geometry"));

  private static final Formula POLAR =
      Formula.define("J_O")
          .meaning("polar moment of both cheeks about the corner")
          .unit(Unit.MM4)
          .where("l", "tenon length", Unit.MM)
          .where("y_1", "near edge of the tenon from the corner", Unit.MM)
          .where("y_2", "far edge of the tenon from the corner", Unit.MM)
          .as("2*((y_2 - y_1)*l^3/3 + l*(y_2^3 - y_1^3)/3)")
          .source(CORNER);

  private static final Formula ARMS =
      Formula.define("R_O")
          .meaning("sum of distances from the corner over both cheeks")
          .unit(Unit.MM3)
          .where("Q_2", "to the far edge", Unit.MM3)
          .where("Q_1", "to the near edge", Unit.MM3)
          .as("2*(Q_2 - Q_1)")
          .source(CORNER);

  private static final Formula PUSH =
      Formula.define("C")
          .meaning("push on the shoulder with the whole line at its strength")
          .unit(Unit.N)
          .where("f_g", "strength of the line", Unit.MPA)
          .where("P_2", "to the far edge", Unit.MM2)
          .where("P_1", "to the near edge", Unit.MM2)
          .as("2*f_g*(P_2 - P_1)")
          .source(CORNER);

  private static final Formula CRUSHED =
      Formula.define("x_c")
          .meaning("depth of shoulder crushed by that push")
          .unit(Unit.MM)
          .where("C", "push", Unit.N)
          .where("b_r", "rail thickness", Unit.MM)
          .where("f_{c,90,u}", "crushing strength across the grain at large strain", Unit.MPA)
          .as("C/(b_r*f_{c,90,u})")
          .source(Source.derived("statics"));

  private static final Formula CORRECTED =
      Formula.define("M_cor")
          .meaning("moment with the lever shortened by the crushed shoulder")
          .unit(Unit.N_MM)
          .where("M_pl", "plastic moment", Unit.N_MM)
          .where("C", "push", Unit.N)
          .where("x_c", "crushed depth", Unit.MM)
          .as("M_pl - C*x_c/2")
          .source(Source.derived("statics"));

  private static final Formula TOTAL =
      Formula.define("R_O")
          .meaning("sum of distances of tenon and haunch")
          .unit(Unit.MM3)
          .where("R_1", "tenon", Unit.MM3)
          .where("R_2", "haunch", Unit.MM3)
          .as("R_1 + R_2")
          .source(CORNER);

  private ShoulderTurning() {}

  /** Area of both cheeks, mm². */
  public static double area(Pad pad, double h, double l) {
    return pad.take(AREA, h, l);
  }

  /** Polar moment of both cheeks about the corner, mm⁴. */
  public static double polar(Pad pad, double l, double near, double far) {
    return pad.take(POLAR, l, near, far);
  }

  /** Sum of distances from the corner over both cheeks, mm³. */
  public static double arms(Pad pad, double l, double near, double far) {
    return pad.take(ARMS, GlueTurning.armSum(pad, l, far), GlueTurning.armSum(pad, l, near));
  }

  /**
   * Sum of distances of a haunched tenon.
   *
   * @param haunchAway whether the haunch lies on the side away from the corner
   */
  public static double armsHaunched(
      Pad pad, double l, double h, double s, double lh, double hh, boolean haunchAway) {
    double tenon = arms(pad, l, s, s + h);
    double haunch =
        haunchAway ? arms(pad, lh, s + h, s + h + hh) : arms(pad, lh, Math.max(0, s - hh), s);
    return pad.take(TOTAL, tenon, haunch);
  }

  /** Push on the shoulder, N. */
  public static double push(Pad pad, double fg, double h, double l, double s) {
    double far = GlueTurning.pushSum(pad, l, s + h);
    return pad.take(PUSH, fg, far, GlueTurning.pushSum(pad, l, s));
  }

  /** Depth of shoulder crushed, mm. */
  public static double crushedDepth(Pad pad, double push, double railB, double crushing) {
    return pad.take(CRUSHED, push, railB, crushing);
  }

  /** Plastic moment less what the crushed shoulder takes off its lever, N·mm. */
  public static double corrected(Pad pad, double plastic, double push, double crushed) {
    return pad.take(CORRECTED, plastic, push, crushed);
  }
}
