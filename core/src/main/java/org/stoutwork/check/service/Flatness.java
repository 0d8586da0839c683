package org.stoutwork.check.service;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.action.Action;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.check.Finding;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.PlateAnswer;
import org.stoutwork.check.PlatedTop;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * How far the top gives way under the plane, anywhere on it: a shaving is thinner than that. The
 * grillage finds the places that come near to the worst; among these the plate decides.
 */
public final class Flatness {

  private final Inquiry inquiry;
  private final Action.PlaneOnTop action;
  private final List<Stand> stands;
  private final int stations;

  private Flatness(Inquiry inquiry, Action.PlaneOnTop action) {
    this.inquiry = inquiry;
    this.action = action;
    this.stands = inquiry.places().everywhere(action);
    this.stations = inquiry.at(JointLevel.MEAN).model().grid().stations().size();
  }

  /** One check for each action of planing. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return inquiry.plan().of(Action.PlaneOnTop.class).stream()
        .map(action -> new Flatness(inquiry, action).check())
        .toList();
  }

  private CheckResult check() {
    int at = worst();
    double limit = inquiry.plan().criteria().flatness();
    StiffnessRange range = inquiry.range(level -> give(level.level(), at) / limit);
    RecordingPad pad = Pad.recording();
    double w = give(JointLevel.MEAN, at);
    boolean plated = inquiry.plate().isPresent();
    pad.given(
        "w",
        "give of the top under the plane",
        w,
        Unit.MM,
        plated ? BothModels.PLATE : BothModels.STRIPS);
    pad.given(
        "w_{lim}", "give allowed by the duty", limit, Unit.MM, inquiry.plan().criteria().source());
    if (plated) {
      double mesh = meshDifference(inquiry.plate().get(), at);
      BothModels.compare(true, w, byStrips(JointLevel.MEAN, at), mesh, pad);
    }
    return inquiry.keep(
        Finding.of("top-flatness", "Give of the top under the plane", Topic.TOP)
            .on("top", inquiry.at(JointLevel.MEAN).loads().placeWords(at / stations, at % stations))
            .under(stands.get(at).words(), "the action alone")
            .over(range)
            .judge(w, limit, Unit.MM, pad),
        behind(at));
  }

  /** The frame whose movement a reader can find again: that of the strips. */
  private GoverningCase behind(int at) {
    Stand stand = stands.get(at);
    return GoverningCase.movement(
        Combination.named("the action alone").plus(stand.force(), stand.unit()),
        "give of the top under the plane, the top as strips",
        byStrips(JointLevel.MEAN, at),
        List.of(
            new GoverningCase.Term(TopLoads.node(at / stations, at % stations), Direction.UZ, -1)));
  }

  private int worst() {
    double most = 0;
    for (int i = 0; i < stands.size(); i++) {
      most = Math.max(most, byStrips(JointLevel.MEAN, i));
    }
    List<Integer> near = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      if (byStrips(JointLevel.MEAN, i) >= TopSag.NEARLY_WORST * most) {
        near.add(i);
      }
    }
    return Greatest.of(near, i -> give(JointLevel.MEAN, i));
  }

  /** The give at one place by the model that the top is judged by. */
  private double give(JointLevel level, int index) {
    return inquiry
        .plate()
        .map(plate -> byPlate(plate, level, index))
        .orElseGet(() -> byStrips(level, index));
  }

  private double byStrips(JointLevel level, int index) {
    Stand stand = stands.get(index);
    String node = TopLoads.node(index / stations, index % stations);
    return -stand.force() * inquiry.at(level).alone(stand.unit()).displacement(node)[2];
  }

  /** What the plane adds to the weight of the bench, so that the top may part from its bearings. */
  private double byPlate(PlatedTop plate, JointLevel level, int index) {
    int line = index / stations;
    int station = index % stations;
    return under(plate, level, index, false).at(line, station)
        - under(plate, level, index, true).at(line, station);
  }

  private PlateAnswer under(PlatedTop plate, JointLevel level, int index, boolean planed) {
    Map<LoadCase, Double> parts = new LinkedHashMap<>();
    parts.put(plate.loads().permanent(), 1.0);
    if (planed) {
      parts.put(plate.loads().unitPatch(index / stations, index % stations), action.force());
    }
    return plate.under(level, parts);
  }

  private double meshDifference(PlatedTop plate, int index) {
    PlateAnswer with = under(plate, JointLevel.MEAN, index, true);
    PlateAnswer without = under(plate, JointLevel.MEAN, index, false);
    int line = index / stations;
    int station = index % stations;
    double usual = without.onUsual(line, station) - with.onUsual(line, station);
    double coarse = without.onCoarse(line, station) - with.onCoarse(line, station);
    return Math.abs((usual - coarse) / usual);
  }
}
