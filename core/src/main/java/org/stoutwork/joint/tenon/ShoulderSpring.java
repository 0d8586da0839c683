package org.stoutwork.joint.tenon;

import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The pressed part of a shoulder: how deep it bears, its lever, and how the post gives under it.
 */
public final class ShoulderSpring {

  private static final Source PRESSED =
      Source.derived("solid models: a shoulder is pressed over 0.29 to 0.38 of the rail's depth");

  private static final Formula CONTACT_DEPTH =
      Formula.define("a")
          .meaning("pressed depth of the shoulder")
          .unit(Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .as("d_r/3")
          .source(PRESSED);

  private static final Formula AREA_SHOULDER_ONLY =
      Formula.define("A_c")
          .meaning("pressed area, all below the tenon")
          .unit(Unit.MM2)
          .where("b_r", "rail thickness", Unit.MM)
          .where("a", "pressed depth", Unit.MM)
          .as("b_r*a")
          .source(Source.derived("geometry"));

  private static final Formula AREA_BESIDE_TENON =
      Formula.define("A_c")
          .meaning("pressed area below and beside the tenon")
          .unit(Unit.MM2)
          .where("b_r", "rail thickness", Unit.MM)
          .where("s", "shoulder on the pressed side", Unit.MM)
          .where("t_m", "width taken by the mortise", Unit.MM)
          .where("a", "pressed depth", Unit.MM)
          .as("b_r*s + (b_r - t_m)*(a - s)")
          .source(Source.derived("geometry"));

  private static final Formula LEVER =
      Formula.define("z")
          .meaning("lever from the middle of the tenon to the middle of the pressure")
          .unit(Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("s", "shoulder on the pressed side", Unit.MM)
          .where("a", "pressed depth", Unit.MM)
          .as("h/2 + s - a/3")
          .source(Source.derived("statics: pressure falls off linearly over the pressed depth"));

  private static final Formula HALF_PLANE =
      Formula.define("E_h")
          .meaning("stiffness of a half plane of wood pressed across its grain")
          .unit(Unit.MPA)
          .where("E_L", "modulus of the post along the grain", Unit.MPA)
          .where("E_90", "modulus of the post behind the shoulder", Unit.MPA)
          .where("G_{L,90}", "shear modulus of that plane", Unit.MPA)
          .where("ν_{L,90}", "Poisson ratio of that plane", Unit.ONE)
          .as("sqrt(2*E_L*E_90/(sqrt(E_L/E_90) + E_L/(2*G_{L,90}) - ν_{L,90}))")
          .source(
              Source.fromMemory(
                  "Lekhnitskii, Anisotropic plates",
                  "pressed half plane; E for an isotropic body"));

  private static final Formula BEARING =
      Formula.define("k_C")
          .meaning("stiffness of the post under the pressed shoulder")
          .unit(Unit.N_PER_MM)
          .where("E_h", "stiffness of the pressed half plane", Unit.MPA)
          .where("A_c", "pressed area", Unit.MM2)
          .as("0.49*E_h*sqrt(A_c)")
          .source(TenonSpring.RULE);

  private static final Formula SHOULDER =
      Formula.define("K_sh")
          .meaning("rotational stiffness of the pressed shoulder")
          .unit(Unit.N_MM_PER_RAD)
          .where("z", "lever", Unit.MM)
          .where("k_C", "stiffness of the post under the shoulder", Unit.N_PER_MM)
          .as("z^2*k_C")
          .source(TenonSpring.RULE);

  private ShoulderSpring() {}

  /**
   * The pressed part of a shoulder.
   *
   * @param depth pressed, mm
   * @param area pressed, mm²
   * @param lever from the middle of the tenon, mm
   */
  public record Face(double depth, double area, double lever) {}

  /**
   * A pressed shoulder and how the post gives under it.
   *
   * @param depth pressed, mm
   * @param area pressed, mm²
   * @param lever from the middle of the tenon, mm
   * @param bearing stiffness of the post under it, N/mm
   * @param rotation stiffness z² k_C, N·mm/rad
   */
  public record Pressed(double depth, double area, double lever, double bearing, double rotation) {}

  /**
   * The pressed part of the shoulder, where its stiffness is not asked.
   *
   * @param railDepth d_r, mm
   * @param railB b_r, mm
   * @param h tenon height, mm
   * @param mortiseWidth width of tenons and what is between them, mm
   * @param shoulder s on the pressed side, mm
   */
  public static Face face(
      Pad pad, double railDepth, double railB, double h, double mortiseWidth, double shoulder) {
    double a = pad.take(CONTACT_DEPTH, railDepth);
    double area =
        shoulder >= a
            ? pad.take(AREA_SHOULDER_ONLY, railB, a)
            : pad.take(AREA_BESIDE_TENON, railB, shoulder, mortiseWidth, a);
    return new Face(a, area, pad.take(LEVER, h, shoulder, a));
  }

  /**
   * The shoulder on the pressed side: {@link #face} and its stiffness.
   *
   * @param halfPlane E* of the post, MPa
   */
  public static Pressed of(
      Pad pad,
      double railDepth,
      double railB,
      double h,
      double mortiseWidth,
      double shoulder,
      double halfPlane) {
    Face face = face(pad, railDepth, railB, h, mortiseWidth, shoulder);
    double kc = pad.take(BEARING, halfPlane, face.area());
    double rotation = pad.take(SHOULDER, face.lever(), kc);
    return new Pressed(face.depth(), face.area(), face.lever(), kc, rotation);
  }

  /** Lever from the middle of the tenon to the pressure, mm. */
  public static double lever(Pad pad, double h, double shoulder, double pressedDepth) {
    return pad.take(LEVER, h, shoulder, pressedDepth);
  }

  /** Stiffness E* of the post pressed in the given direction across its grain, MPa. */
  public static double halfPlane(Pad pad, TimberStiffness post, FaceGrain face) {
    return pad.take(
        HALF_PLANE, post.eL(), post.across(face), post.shearWith(face), post.poissonWith(face));
  }

  /** Stiffness of wood of half-plane stiffness E* under a pressed area, N/mm. */
  public static double bearing(Pad pad, double halfPlane, double area) {
    return pad.take(BEARING, halfPlane, area);
  }
}
