package org.stoutwork.check.service;

import java.util.List;
import org.stoutwork.action.Action;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.check.Finding;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** How far the top gives way under the plane, anywhere on it: a shaving is thinner than that. */
public final class Flatness {

  private Flatness() {}

  /** One check for each action of planing. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return inquiry.plan().of(Action.PlaneOnTop.class).stream()
        .map(action -> check(inquiry, action))
        .toList();
  }

  private static CheckResult check(Inquiry inquiry, Action.PlaneOnTop action) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    List<Stand> stands = inquiry.places().everywhere(action);
    int stations = mean.model().grid().stations().size();
    int worst = 0;
    for (int i = 0; i < stands.size(); i++) {
      if (give(mean, stands.get(i), i, stations) > give(mean, stands.get(worst), worst, stations)) {
        worst = i;
      }
    }
    Stand stand = stands.get(worst);
    int at = worst;
    double limit = inquiry.plan().criteria().flatness();
    StiffnessRange range = inquiry.range(level -> give(level, stand, at, stations) / limit);
    RecordingPad pad = Pad.recording();
    double w = give(mean, stand, at, stations);
    Source analysis = Source.derived("analysis of the frame, joints at mean stiffness");
    pad.given("w", "give of the top under the plane", w, Unit.MM, analysis);
    pad.given(
        "w_{lim}", "give allowed by the duty", limit, Unit.MM, inquiry.plan().criteria().source());
    CheckResult.Checked check =
        Finding.of("top-flatness", "Give of the top under the plane", Topic.TOP)
            .on("top", mean.loads().placeWords(at / stations, at % stations))
            .under(stand.words(), "the action alone")
            .over(range)
            .judge(w, limit, Unit.MM, pad);
    String node = TopLoads.node(at / stations, at % stations);
    Combination alone = Combination.named("the action alone").plus(stand.force(), stand.unit());
    return inquiry.keep(
        check,
        GoverningCase.movement(
            alone,
            "give of the top under the plane",
            w,
            List.of(new GoverningCase.Term(node, Direction.UZ, -1))));
  }

  private static double give(LevelAnalysis level, Stand stand, int index, int stations) {
    String node = TopLoads.node(index / stations, index % stations);
    return -stand.force() * level.alone(stand.unit()).displacement(node)[2];
  }
}
