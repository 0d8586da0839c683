package org.stoutwork.check.service;

import java.util.List;
import java.util.Optional;
import org.stoutwork.action.Action;
import org.stoutwork.action.Way;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Sway by the springs alone: feet pinned, legs and rails rigid, every joint of the frames that lie
 * in the thrust's direction turning by the same angle. The analysis also bends the wood and so
 * moves more, or stands on more joints and moves less.
 */
final class FrameByHand {

  private static final Formula SWAY =
      Formula.define("δ_{hand}")
          .meaning("sway if only the joints gave way")
          .unit(Unit.MM)
          .where("H", "thrust", Unit.N)
          .where("h", "height", Unit.MM)
          .where("ΣK", "sum of the joints' mean stiffness", Unit.N_MM_PER_RAD)
          .as("H*h^2/ΣK")
          .source(Source.derived("work of the joints: each turns by δ/h"));

  private FrameByHand() {}

  static void compare(Inquiry inquiry, Action.Thrust thrust, Pad pad) {
    Optional<Double> sum = sum(inquiry.at(JointLevel.MEAN).model().joints(), thrust.way());
    if (sum.isEmpty()) {
      return;
    }
    pad.remark("By hand, for comparison: rigid wood, all joints turning alike.");
    pad.take(SWAY, thrust.force(), inquiry.bench().height().mm(), sum.get());
  }

  private static Optional<Double> sum(List<JointSpot> joints, Way way) {
    double total = 0;
    for (JointSpot spot : joints) {
      boolean alongJoint = spot.kind() == PartKind.STRETCHER;
      if (alongJoint == (way == Way.ALONG) && !spot.upright()) {
        total += spot.stiffness().mean().rotInPlane();
      }
    }
    return total > 0 ? Optional.of(total) : Optional.empty();
  }
}
