package org.stoutwork.check.joint;

import org.stoutwork.bench.TopFixing;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.quantity.Writing;

/**
 * Which screws of a top rail share the shear between rail and top. A screw with play bears only
 * when the top has slid by it, so only those without play are counted; where all have play, one
 * bears first and is counted alone. Friction is not counted: it needs weight, and a top that is
 * lifted or dry has none to spare.
 */
final class TopPlay {

  private TopPlay() {}

  static RowForces.Tight tight(TopFixing fixing) {
    int across = fixing.tightAcross();
    int along = fixing.tightAlong();
    return new RowForces.Tight(Math.max(1, across), Math.max(1, along), why(fixing, along, across));
  }

  private static String why(TopFixing fixing, int along, int across) {
    int all = fixing.perRail();
    if (along == all && across == all) {
      return "";
    }
    String shared =
        "Shear is shared by the screws that have no play: %s of %s along the bench, %s of %s across"
                .formatted(along, all, across, all)
            + " it. Friction is not counted.";
    if (across > 0 && along > 0) {
      return shared;
    }
    return shared
        + " Where none has none, the top slides by up to %s mm until one screw bears, which is"
            .formatted(Writing.fixed(fixing.play(), 1))
        + " counted alone.";
  }
}
