package org.stoutwork.joint.capacity;

import org.stoutwork.joint.glue.GluedPanel;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/**
 * The wood beside the glue of a bridle or a lap, where rail and post cross and hand a moment over:
 * each is sheared along its grain within the joint and pulled apart across it.
 *
 * @param a glued side along the rail, mm
 * @param b glued side along the post, mm
 */
record CrossedPanels(Case with, double a, double b) {

  private static final Formula SHEARED =
      Formula.define("V_R")
          .meaning("shear of the piece along its grain")
          .unit(Unit.N)
          .where("f_v", "shear strength", Unit.MPA)
          .where("k_cr", "share of the width left by cracks", Unit.ONE)
          .where("t", "thickness that belongs to the faces", Unit.MM)
          .where("h", "depth across its grain", Unit.MM)
          .as("f_v*k_cr*t*h/1.5")
          .source(Source.derived("beam theory"));

  /**
   * The part of one piece within the joint.
   *
   * @param words what it is called
   * @param place the part of the joint it belongs to
   * @param wood its strengths
   * @param thickness that belongs to the glued faces; where faces have unequal parts behind them,
   *     as many times the thinnest, mm
   * @param depth across its grain, mm
   */
  record Piece(String words, String place, TimberStrength wood, double thickness, double depth) {}

  /** Both limits of the rail's part. */
  void rail(Piece tongue) {
    both(tongue, a, b, with.forces().shear());
  }

  /** Both limits of the post's part. */
  void post(Piece cheeks) {
    both(cheeks, b, a, with.forces().axial());
  }

  private void both(Piece piece, double along, double across, double force) {
    JointForces f = with.forces();
    with.limits()
        .strength(
            piece.words() + " shearing along the grain within the joint",
            piece.place(),
            Unit.N,
            pad -> GluedPanel.shear(pad, along, across, f.moment(), force),
            pad ->
                pad.take(
                    SHEARED,
                    piece.wood().fV(),
                    with.family().crackFactor(),
                    piece.thickness(),
                    piece.depth()));
    with.limits()
        .strength(
            piece.words() + " splitting along the grain beside the glue",
            piece.place(),
            Unit.MPA,
            pad -> GluedPanel.tension(pad, along, across, piece.thickness(), f.moment(), force),
            pad -> piece.wood().fT90());
  }
}
