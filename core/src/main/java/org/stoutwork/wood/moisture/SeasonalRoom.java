package org.stoutwork.wood.moisture;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The room that a screw or peg needs in its hole or slot, so that solid wood may swell and shrink
 * across the grain from the place where it is held.
 */
public final class SeasonalRoom {

  /** Room beyond the calculated, so that nothing binds; project default, mm. */
  public static final double EASE = 1;

  private static final Formula NEEDED =
      Formula.define("s")
          .meaning("room that is needed in the hole or slot farthest from where the wood is held")
          .unit(Unit.MM)
          .where("Δ_{out}", "swelling there", Unit.MM)
          .where("Δ_{in}", "shrinking there", Unit.MM)
          .where("c", "ease", Unit.MM)
          .as("2*max(Δ_{out}, Δ_{in}) + c")
          .source(Source.derived("it stands in the middle of the hole or slot at assembly"));

  private SeasonalRoom() {}

  /**
   * Length of the hole or slot beyond the diameter of what stands in it, mm.
   *
   * @param reach from the place where the wood is held, across the grain, mm, above 0
   * @param atAssembly moisture content when it was put together, %, 0 to 30
   * @param range of the moisture in which it will live
   */
  public static double needed(
      Pad pad, Shrinkage shrinkage, double reach, double atAssembly, MoistureRange range) {
    double out = change(pad, shrinkage, reach, atAssembly, Math.max(range.high(), atAssembly));
    double in = change(pad, shrinkage, reach, atAssembly, Math.min(range.low(), atAssembly));
    return pad.take(NEEDED, out, in, EASE);
  }

  private static double change(Pad pad, Shrinkage shrinkage, double reach, double from, double to) {
    return from == to
        ? 0
        : Math.abs(Movement.across(shrinkage, RingDirection.UNKNOWN, reach, from, to, pad).most());
  }
}
