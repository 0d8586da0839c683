package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.quantity.Writing;

/**
 * The nodes on the axis of one leg: where it stands and where a rail or stretcher meets it.
 *
 * @param name of the leg, such as "left front leg"
 * @param x along the bench, mm
 * @param y across the bench, mm
 * @param levels node names by height, mm
 */
record LegLines(String name, double x, double y, TreeMap<Double, String> levels) {

  private static final double SAME_LEVEL = 0.5;

  static LegLines of(Bench bench, EndFrame frame, StretcherLine side) {
    double y =
        side == StretcherLine.FRONT ? Layout.frontLegY(frame) : Layout.backLegY(bench, frame);
    String name = frame.name() + " " + side.words() + " leg";
    LegLines leg = new LegLines(name, frame.at().mm(), y, new TreeMap<>());
    if (frame.foot().isEmpty()) {
      leg.level(0);
    }
    frame.bottomRail().ifPresent(rail -> leg.level(rail.centreAt().mm()));
    if (frame.topRail().seat() == Seat.BETWEEN) {
      leg.level(frame.topRail().centreAt().mm());
    }
    for (Stretcher stretcher : bench.stretchers()) {
      if (stretcher.line() == side) {
        leg.level(stretcher.endCentreMm());
      }
    }
    return leg;
  }

  /** The node at a height, made if there is none. */
  String level(double z) {
    Double near = levels.floorKey(z + SAME_LEVEL);
    if (near != null && z - near < SAME_LEVEL) {
      return levels.get(near);
    }
    String rounded = name + " at " + Writing.fixed(z, 0);
    String node = levels.containsValue(rounded) ? name + " at " + Writing.fixed(z, 1) : rounded;
    levels.put(z, node);
    return node;
  }

  List<Chain.Stop> stops() {
    List<Chain.Stop> out = new ArrayList<>();
    levels.forEach((z, node) -> out.add(new Chain.Stop(node, z)));
    return out;
  }
}
