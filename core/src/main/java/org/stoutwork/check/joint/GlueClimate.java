package org.stoutwork.check.joint;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.TopLayer;
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
    if (gluedWoods(inquiry).isEmpty()) {
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

  /** Woods in glued joints and glue lines that are known to bond with difficulty, by name. */
  public static List<String> woodsThatGluePoorly(Inquiry inquiry) {
    return gluedWoods(inquiry).stream()
        .map(wood -> inquiry.bench().timbers().get(wood).wood())
        .filter(inquiry.strengths().tables()::gluesPoorly)
        .map(Wood::name)
        .distinct()
        .toList();
  }

  /** The keys of all woods that some glue joins, in the order in which it is met. */
  private static Set<String> gluedWoods(Inquiry inquiry) {
    Bench bench = inquiry.bench();
    Set<String> out = new LinkedHashSet<>();
    BenchModel model = inquiry.at(JointLevel.MEAN).model();
    for (JointSpot spot : model.joints()) {
      if (spot.joint().joint().title().contains("glued")) {
        model.parts().stream()
            .filter(p -> p.name().equals(spot.rail()) || p.name().equals(spot.post()))
            .forEach(p -> out.add(p.wood()));
      }
    }
    for (EndFrame frame : bench.endFrames()) {
      frame.leg().lamination().ifPresent(made -> out.add(frame.leg().wood()));
    }
    List<TopLayer> layers = bench.top().layers();
    for (Stretcher stretcher : bench.stretchers()) {
      stretcher.extension().ifPresent(piece -> out.add(stretcher.wood()));
      if (stretcher.hold() instanceof LayerHold.Glued) {
        out.add(stretcher.wood());
        out.add(layers.get(0).wood());
      }
    }
    boolean stacked = layers.size() > 1 && bench.top().hold() instanceof LayerHold.Glued;
    boolean wide = bench.top().width().mm() > WIDEST_BOARD;
    for (TopLayer layer : layers) {
      boolean sheet = bench.timbers().get(layer.wood()).wood() instanceof SheetGood;
      if (stacked || (wide && !sheet)) {
        out.add(layer.wood());
      }
    }
    return out;
  }
}
