package org.stoutwork.check;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Action;
import org.stoutwork.action.ActionPlan;
import org.stoutwork.action.Way;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;

/** Every place in which the actions of a bench are tried. */
public final class Stands {

  private record Place(LoadCase unit, String words) {}

  private final List<Place> points = new ArrayList<>();
  private final List<LoadCase> along = new ArrayList<>();
  private final List<LoadCase> across = new ArrayList<>();
  private final LoadCase spread;

  Stands(Bench bench, TopGrid grid, TopLoads loads) {
    for (int line = 0; line < grid.lines().size(); line++) {
      for (int station = 0; station < grid.stations().size(); station++) {
        points.add(
            new Place(loads.unitPoint(line, station), ", " + loads.placeWords(line, station)));
      }
    }
    int middleStation = grid.stationNear(bench.top().length().mm() / 2);
    int middleLine = grid.lineNear(bench.top().width().mm() / 2);
    along.add(loads.unitAlong(0, middleStation));
    along.add(loads.unitAlong(middleLine, middleStation));
    along.add(loads.unitAlong(grid.lines().size() - 1, middleStation));
    for (EndFrame frame : bench.endFrames()) {
      across.add(loads.unitAcross(middleLine, grid.stationNear(frame.at().mm())));
    }
    across.add(loads.unitAcross(middleLine, middleStation));
    spread = loads.unitSpread();
  }

  /** All actions that strength is checked for. */
  List<Stand> all(ActionPlan plan) {
    List<Stand> out = new ArrayList<>();
    plan.of(Action.PointOnTop.class).forEach(a -> out.addAll(everywhere(a)));
    plan.of(Action.SpreadOnTop.class).forEach(a -> out.add(spread(a)));
    plan.of(Action.Thrust.class).forEach(a -> out.addAll(thrusts(a)));
    return out;
  }

  /** A downward force on every crossing of the top's lines. */
  public List<Stand> everywhere(Action action) {
    List<Stand> out = new ArrayList<>();
    for (Place place : points) {
      out.add(new Stand(action, place.unit(), action.force(), action.name() + place.words()));
    }
    return out;
  }

  /** A downward force spread over the whole top. */
  public Stand spread(Action action) {
    return new Stand(action, spread, action.force(), action.name());
  }

  /** A push with both signs: over each end frame and mid-way, or along each long edge. */
  public List<Stand> thrusts(Action.Thrust thrust) {
    List<Stand> out = new ArrayList<>();
    for (LoadCase unit : thrust.way() == Way.ALONG ? along : across) {
      for (int sign = 1; sign >= -1; sign -= 2) {
        String direction = direction(thrust.way(), sign);
        out.add(
            new Stand(
                thrust,
                unit,
                sign * thrust.force(),
                thrust.name() + ", " + direction + ", " + unit.name()));
      }
    }
    return out;
  }

  private static String direction(Way way, int sign) {
    if (way == Way.ALONG) {
      return sign > 0 ? "to the right" : "to the left";
    }
    return sign > 0 ? "to the back" : "to the front";
  }
}
