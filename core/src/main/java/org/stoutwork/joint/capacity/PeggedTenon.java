package org.stoutwork.joint.capacity;

import java.util.List;
import java.util.stream.IntStream;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.setting.CrossBore;

/**
 * A tenon or tongue with pegs through it, mm, and what bolts of other joints that cross it leave
 * beside and behind the pegs.
 *
 * @param height h
 * @param below shoulder below it
 * @param thickness t of one
 * @param count of tenons
 * @param length l in the post
 * @param cheek c
 * @param shoulder on the pressed side
 */
record PeggedTenon(
    double height,
    double below,
    double thickness,
    int count,
    double length,
    double cheek,
    double shoulder) {

  /** Wood of the tenon behind the pegs: up to its end, or to a bolt that crosses there; mm. */
  double behind(Fit.Pegged fit, List<CrossBore> bores) {
    double free = length - fit.fromShoulder();
    for (CrossedTenon.Slot slot : crossing(bores)) {
      if (slot.fromShoulder() > fit.fromShoulder() && inLine(fit, slot)) {
        free = Math.min(free, Math.max(0, slot.near() - fit.fromShoulder()));
      }
    }
    return free;
  }

  /** Height taken by the pegs and by bolts that cross between them and the shoulder, mm. */
  double holes(Fit.Pegged fit, List<CrossBore> bores) {
    double d = fit.peg().diameter();
    double bolts =
        crossing(bores).stream()
            .filter(slot -> slot.near() < fit.fromShoulder() + d / 2)
            .mapToDouble(CrossedTenon.Slot::size)
            .sum();
    return Math.min(height, fit.pegs() * d + bolts);
  }

  private List<CrossedTenon.Slot> crossing(List<CrossBore> bores) {
    return CrossedTenon.of(thickness, height, below, length, bores).slots();
  }

  private static boolean inLine(Fit.Pegged fit, CrossedTenon.Slot slot) {
    double reach = (slot.size() + fit.peg().diameter()) / 2;
    return IntStream.range(0, fit.pegs())
        .mapToDouble(i -> (i - (fit.pegs() - 1) / 2.0) * fit.spacing())
        .anyMatch(peg -> Math.abs(peg - slot.middle()) < reach);
  }
}
