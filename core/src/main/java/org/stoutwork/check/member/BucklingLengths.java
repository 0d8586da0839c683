package org.stoutwork.check.member;

import java.util.List;
import org.stoutwork.action.Way;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.Racking;
import org.stoutwork.section.Rectangle;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Over what length a member buckles. A rail or stretcher over its own; a leg over that of a sway
 * frame, from the racking stiffness at the joints' softest, and never less than its own. Where the
 * frame folds at the softest, which is the business of the sway, the mean stiffness is taken.
 */
final class BucklingLengths {

  private static final Formula SWAY_LENGTH =
      Formula.define("l_{ef}")
          .meaning("buckling length of a leg that sways with the frame")
          .unit(Unit.MM)
          .where("E", "mean modulus", Unit.MPA)
          .where("I", "second moment of the leg", Unit.MM4)
          .where("n", "push on all legs over that on the hardest pressed one", Unit.ONE)
          .where("k", "racking stiffness", Unit.N_PER_MM)
          .where("h", "height", Unit.MM)
          .as("π*sqrt(E*I*n/(k*h))")
          .source(
              Source.derived(
                  "Euler; a frame folds when its weight reaches k·h, and legs that are pressed less"
                      + " hold up the others"));

  private final Inquiry inquiry;
  private final List<Racking> racking;

  private final double shares;

  /**
   * Buckling lengths of one bench.
   *
   * @param shares push on all legs over that on the hardest pressed one, at least 1
   */
  BucklingLengths(Inquiry inquiry, List<Racking> racking, double shares) {
    this.inquiry = inquiry;
    this.racking = racking;
    this.shares = shares;
  }

  /** Length over which a part buckles the given way, mm. */
  double of(Part part, Way way, Pad pad) {
    if (part.kind() != PartKind.LEG) {
      return part.length();
    }
    double k =
        racking.stream()
            .filter(r -> r.way() == way)
            .mapToDouble(BucklingLengths::stiffness)
            .min()
            .orElse(Double.NaN);
    if (Double.isNaN(k)) {
      return 2 * part.length();
    }
    if (racking.stream().anyMatch(r -> r.way() == way && r.foldsAtSoftest())) {
      pad.remark("The frame folds with its joints at their softest: their mean is taken here.");
    }
    Rectangle r = part.pieces().get(0).section();
    double i = way == Way.ALONG ? r.secondMoment() : r.turned().secondMoment();
    double e = inquiry.timbers().get(part.wood()).e();
    double length = pad.take(SWAY_LENGTH, e, i, shares, k, inquiry.bench().height().mm());
    return Math.max(length, part.length());
  }

  private static double stiffness(Racking racking) {
    return racking.foldsAtSoftest() ? racking.stiffness().mean() : racking.stiffness().low();
  }
}
