package org.stoutwork.check.movement;

import java.util.Comparator;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.moisture.SeasonalRoom;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Whether the top can swell and shrink at its screws: held by one screw of each rail, it moves at
 * the others, and their holes or slots must leave as much room.
 */
public final class TopMovement {

  private static final String KEY = "top-movement";
  private static final String TITLE = "Movement of the top at its screws";

  private static final Formula ROOM =
      Formula.define("R_d")
          .meaning("room in the hole")
          .unit(Unit.MM)
          .where("D", "diameter of the hole, or length of the slot", Unit.MM)
          .where("d", "diameter of the screw", Unit.MM)
          .as("D - d")
          .source(Source.derived("geometry"));

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
      return left(UnknownMovement.reason(bench));
    }
    if (bench.top().fixing().perRail() == 1) {
      return left("one screw in each rail holds the top in one place, from which it may move");
    }
    return solid(bench, (Species) bench.timbers().get(layer.wood()).wood());
  }

  private static CheckResult left(String reason) {
    return new CheckResult.NotChecked(KEY, TITLE, "top", Topic.MOVEMENT, reason);
  }

  private static CheckResult solid(Bench bench, Species species) {
    Air air = bench.air();
    TopFixing fixing = bench.top().fixing();
    EndFrame frame =
        bench.endFrames().stream()
            .max(Comparator.comparingDouble(f -> reach(bench, f)))
            .orElseThrow();
    RecordingPad pad = Pad.recording();
    double needed =
        SeasonalRoom.needed(
            pad, species.shrinkage(), reach(bench, frame), air.atAssembly(), air.range());
    double room = pad.take(ROOM, fixing.hole().length(), fixing.screwDiameter().mm());
    return Finding.of(KEY, TITLE, Topic.MOVEMENT)
        .on("top", where(bench, frame))
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

  private static double reach(Bench bench, EndFrame frame) {
    return ScrewRow.of(bench, frame).reach(bench.top().fixing().held());
  }

  private static String where(Bench bench, EndFrame frame) {
    TopHeld held = bench.top().fixing().held();
    String from =
        switch (held) {
          case MIDDLE -> "the top held by the middle one";
          case FRONT -> "the top held by the foremost";
          case NOWHERE -> "the top held by none and moving from their middle";
        };
    return "at the outermost screw of the %s top rail, %s mm off, %s"
        .formatted(frame.name(), Writing.fixed(reach(bench, frame), 0), from);
  }
}
