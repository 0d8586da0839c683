package org.stoutwork.check.joint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Timber;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Wood;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Whether the glue may live in wood as damp as the bench will be. */
public final class GlueClimate {

  /** A solid top wider than this is glued up of boards, mm; few boards are wider. */
  private static final double WIDEST_BOARD = 300;

  private GlueClimate() {}

  /** The check; empty where nothing is glued. */
  public static Optional<CheckResult> check(Inquiry inquiry) {
    Bench bench = inquiry.bench();
    if (!gluedAnywhere(inquiry)) {
      return Optional.empty();
    }
    Glue glue = bench.glue().glue();
    RecordingPad pad = Pad.recording();
    double wet =
        pad.given(
            "u_wet",
            "moisture content of the wood at its wettest",
            Math.max(bench.air().range().high(), bench.air().atAssembly()),
            Unit.POINT,
            Source.yours("air of the bench"));
    double allowed =
        pad.given(
            "u_max",
            "moisture content that the class of the glue is made for",
            glue.grade().wettest(),
            Unit.POINT,
            Source.fromMemory(glue.grade().words(), "fields of use"));
    return Optional.of(
        Finding.of("glue-climate", "Glue in this air", Topic.JOINT)
            .on("every glue line", glue.name() + ", " + glue.grade().words())
            .under("the wettest season", "")
            .judge(wet, allowed, Unit.POINT, pad));
  }

  /** Woods of a bench with glue in it that are known to bond with difficulty, by name. */
  public static List<String> woodsThatGluePoorly(Inquiry inquiry) {
    if (!gluedAnywhere(inquiry)) {
      return List.of();
    }
    return inquiry.bench().timbers().values().stream()
        .map(Timber::wood)
        .filter(inquiry.strengths().tables()::gluesPoorly)
        .map(Wood::name)
        .distinct()
        .toList();
  }

  static boolean gluedAnywhere(Inquiry inquiry) {
    Bench bench = inquiry.bench();
    boolean joints =
        inquiry.at(JointLevel.MEAN).model().joints().stream()
            .anyMatch(spot -> spot.joint().joint().title().contains("glued"));
    boolean legs = bench.endFrames().stream().anyMatch(f -> f.leg().lamination().isPresent());
    boolean ends = bench.stretchers().stream().anyMatch(s -> s.extension().isPresent());
    boolean held =
        Stream.concat(
                bench.top().layers().size() > 1 ? Stream.of(bench.top().hold()) : Stream.empty(),
                bench.stretchers().stream().map(s -> s.hold()))
            .anyMatch(LayerHold.Glued.class::isInstance);
    boolean slab =
        bench.top().layers().stream()
            .anyMatch(
                layer ->
                    !(bench.timbers().get(layer.wood()).wood() instanceof SheetGood)
                        && bench.top().width().mm() > WIDEST_BOARD);
    return joints || legs || ends || held || slab;
  }
}
