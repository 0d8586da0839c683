package org.stoutwork.check.movement;

import java.util.List;
import java.util.OptionalDouble;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.moisture.Movement;
import org.stoutwork.wood.moisture.RingDirection;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Whether the top can swell and shrink at its screws: held at its middle, it moves half its width
 * on either side, and the holes must leave as much room.
 */
public final class TopMovement {

  private static final Formula NEEDED =
      Formula.define("s")
          .meaning("room that the screw farthest from the middle needs")
          .unit(Unit.MM)
          .where("Δ_{out}", "swelling at the screw", Unit.MM)
          .where("Δ_{in}", "shrinking at the screw", Unit.MM)
          .where("c", "ease", Unit.MM)
          .as("2*max(Δ_{out}, Δ_{in}) + c")
          .source(Source.derived("a round hole is centred on the screw at assembly"));

  private static final Formula ROOM =
      Formula.define("R_d")
          .meaning("room in the hole")
          .unit(Unit.MM)
          .where("D", "diameter of the hole, or length of the slot", Unit.MM)
          .where("d", "diameter of the screw", Unit.MM)
          .as("D - d")
          .source(Source.derived("geometry"));

  private static final double EASE = 1;

  private TopMovement() {}

  /** One check, or the reason why there is none. */
  public static CheckResult check(Inquiry inquiry) {
    Bench bench = inquiry.bench();
    TopLayer layer = bench.top().layers().get(0);
    boolean solid =
        bench.timbers().get(layer.wood()).wood() instanceof Species
            && layer.grain() == Grain.ALONG
            && bench.top().layers().size() == 1;
    if (!solid) {
      return new CheckResult.NotChecked(
          "top-movement",
          "Movement of the top at its screws",
          "top",
          Topic.MOVEMENT,
          UnknownMovement.reason(bench));
    }
    return solid(inquiry, (Species) bench.timbers().get(layer.wood()).wood());
  }

  private static CheckResult solid(Inquiry inquiry, Species species) {
    Bench bench = inquiry.bench();
    Air air = bench.air();
    double reach = farthestScrew(bench);
    RecordingPad pad = Pad.recording();
    double out =
        change(
            species, reach, air.atAssembly(), Math.max(air.range().high(), air.atAssembly()), pad);
    double in =
        change(
            species, reach, air.atAssembly(), Math.min(air.range().low(), air.atAssembly()), pad);
    double needed = pad.take(NEEDED, out, in, EASE);
    TopFixing fixing = bench.top().fixing();
    double room = pad.take(ROOM, fixing.holeDiameter().mm(), fixing.screwDiameter().mm());
    return Finding.of("top-movement", "Movement of the top at its screws", Topic.MOVEMENT)
        .on("top", "at the screws nearest to the edges, the top held at its middle")
        .under(
            "moisture from %s %% to %s %%, %s %% at assembly"
                .formatted(
                    Writing.fixed(air.range().low(), 1),
                    Writing.fixed(air.range().high(), 1),
                    Writing.fixed(air.atAssembly(), 1)),
            "a year's seasons")
        .needs()
        .judge(needed, Math.max(room, 1e-3), Unit.MM, pad);
  }

  private static double change(Species species, double size, double from, double to, Pad pad) {
    return from == to
        ? 0
        : Math.abs(
            Movement.across(species.shrinkage(), RingDirection.UNKNOWN, size, from, to, pad)
                .most());
  }

  /** Screws stand in the rails, up to the legs; a single row across needs no room. */
  private static double farthestScrew(Bench bench) {
    EndFrame frame = bench.endFrames().get(0);
    List<Double> ends =
        List.of(
            bench.top().width().mm() / 2 - frame.frontInset().mm() - frame.leg().across().mm(),
            bench.top().width().mm() / 2 - frame.backInset().mm() - frame.leg().across().mm());
    OptionalDouble farthest = ends.stream().mapToDouble(Double::doubleValue).max();
    return Math.max(1, farthest.orElse(1));
  }
}
