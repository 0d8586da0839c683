package org.stoutwork.bench.sketch;

import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.Seat;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.quantity.Length;

/** Whether a top rail can be left proud of the end of its legs. */
final class Proudness {

  private Proudness() {}

  static void check(
      Answers answers, String rail, Seat seat, Length proud, JointPlace place, BenchJoint joint) {
    if (proud.mm() == 0) {
      return;
    }
    String key = rail + ".proud";
    if (seat == Seat.OVER) {
      answers.fault(
          key, proud.toString(), "a rail over the legs ends above them anyway; leave it out");
      return;
    }
    TenonHole hole = TenonHole.of(joint.joint(), place.members());
    double room = place.railDepth() - hole.below() - hole.height();
    if (!(proud.mm() <= room)) {
      answers.fault(
          key,
          proud.toString(),
          "at most %s, or the tenon itself stands above the leg: leave more shoulder above the tenon"
              .formatted(Length.ofMm(Math.max(0, room))));
      return;
    }
    double lever = room + hole.height() / 2 - place.railDepth() / 8;
    boolean pressed =
        joint.joint() instanceof MortiseAndTenon || joint.joint() instanceof LooseWedgeTenon;
    if (pressed && !(proud.mm() <= lever)) {
      answers.fault(
          key,
          proud.toString(),
          "at most %s, or the shoulder above the tenon has no lever to press with: make shoulderBelow smaller"
              .formatted(Length.ofMm(Math.max(0, lever))));
    }
  }
}
