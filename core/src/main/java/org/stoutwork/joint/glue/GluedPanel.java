package org.stoutwork.joint.glue;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What glued faces do to the wood beside them where two pieces cross and hand a moment over to each
 * other: the tongue of a bridle and the cheeks of its slot, the halves of a lap. The slip turns
 * about the middle of the faces. Along each piece the glue therefore pushes one way near one end of
 * the faces and the other way near the other end, so that the piece is sheared along its grain
 * between them; and as the glue pushes evenly over the depth of the piece while its shear stress is
 * spread as a parabola, some tension across the grain is left over. Both are alike in either sense
 * of the moment.
 *
 * <p>All of the faces are taken to be equally strong (plastic), as in {@link GlueTurning}. That a
 * cheek is glued on one side only, and bends a little out of its plane, is not counted.
 */
public final class GluedPanel {

  private static final Source TURNED =
      Source.derived(
          "statics: slip about the middle of the faces, both halves of a piece balanced");

  private static final Formula SHEARED =
      Formula.define("V_p")
          .meaning("shear of the piece in the middle of the glued faces")
          .unit(Unit.N)
          .where("M", "moment", Unit.N_MM)
          .where("P", "part across the piece of the slip of a quarter of one face", Unit.MM2)
          .where("Q", "sum of distances over a quarter of one face", Unit.MM3)
          .where("F", "force across the piece, half of which has passed by then", Unit.N)
          .as("M*P/(2*Q) + F/2")
          .source(TURNED);

  private static final Formula PUSHED =
      Formula.define("q")
          .meaning("push of the glue across the piece at the end of the faces")
          .unit(Unit.N_PER_MM)
          .where("M", "moment", Unit.N_MM)
          .where("a", "length of the faces along the grain of the piece", Unit.MM)
          .where("b", "the other side of the faces", Unit.MM)
          .where("Q", "sum of distances over a quarter of one face", Unit.MM3)
          .where("F", "force across the piece, spread along the faces", Unit.N)
          .as("M*a*ln((b + sqrt(a^2 + b^2))/a)/(4*Q) + F/a")
          .source(TURNED);

  private static final Formula TENSION =
      Formula.define("σ_{t,90}")
          .meaning("tension across the grain beside the glue, a quarter of the depth from an edge")
          .unit(Unit.MPA)
          .where("q", "push of the glue across the piece", Unit.N_PER_MM)
          .where("t", "thickness that belongs to the faces", Unit.MM)
          .as("q/(6*sqrt(3)*t)")
          .source(
              Source.derived(
                  "beam theory: even push over the depth less the parabola of shear, its greatest"));

  private GluedPanel() {}

  /**
   * Shear of a piece in the middle of glued faces, N; faces cancel out.
   *
   * @param along length of the faces along the grain of the piece, mm
   * @param across their other side, mm
   * @param moment N·mm
   * @param force on the joint across the piece, N
   */
  public static double shear(Pad pad, double along, double across, double moment, double force) {
    double q = GlueTurning.armSum(pad, along / 2, across / 2);
    double p = GlueTurning.pushSum(pad, across / 2, along / 2);
    return pad.take(SHEARED, Math.abs(moment), p, q, Math.abs(force));
  }

  /**
   * Greatest tension across the grain of a piece beside glued faces, MPa.
   *
   * @param along length of the faces along the grain of the piece, mm
   * @param across their other side, mm
   * @param thickness that belongs to all faces together, mm
   * @param moment N·mm
   * @param force on the joint across the piece, N
   */
  public static double tension(
      Pad pad, double along, double across, double thickness, double moment, double force) {
    double q = GlueTurning.armSum(pad, along / 2, across / 2);
    double push = pad.take(PUSHED, Math.abs(moment), along, across, q, Math.abs(force));
    return pad.take(TENSION, push, thickness);
  }
}
