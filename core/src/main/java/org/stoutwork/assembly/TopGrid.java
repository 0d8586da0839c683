package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Weight;

/**
 * The lines of the grillage that stands for the top: lines along the bench at fixed places across
 * it, stations across the bench at fixed places along it.
 *
 * <p>Lines and stations pass through the legs and the middle, and close in on the edges as far as
 * half a hand: a load acts on a patch, and its middle comes no nearer to the edge.
 *
 * @param lines places across the bench, mm from the front edge, rising
 * @param stations places along the bench, mm from the left end, rising
 * @param width of the top, mm
 * @param length of the top, mm
 */
public record TopGrid(List<Double> lines, List<Double> stations, double width, double length) {

  /** Half the side of the patch on which a person or a plane presses, mm. */
  static final double HALF_PATCH = 50;

  private static final double LINES_APART = 190;
  private static final double STATIONS_APART = 260;
  private static final double NEAREST = 45;

  /** Keeps its own copies. */
  public TopGrid {
    lines = List.copyOf(lines);
    stations = List.copyOf(stations);
  }

  static TopGrid of(Bench bench) {
    double width = bench.top().width().mm();
    double length = bench.top().length().mm();
    List<Double> across = new ArrayList<>();
    across.add(width / 2);
    for (EndFrame frame : bench.endFrames()) {
      across.add(Layout.frontLegY(frame));
      across.add(Layout.backLegY(bench, frame));
    }
    List<Double> along =
        new ArrayList<>(bench.endFrames().stream().map(frame -> frame.at().mm()).toList());
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine machine) {
        feet(across, machine.y().mm(), machine.baseAcross().mm() / 2, width);
        feet(along, machine.x().mm(), machine.baseAlong().mm() / 2, length);
      }
    }
    return new TopGrid(
        filled(across, width, LINES_APART), filled(along, length, STATIONS_APART), width, length);
  }

  /** A machine's feet get places of their own, unless another is too near. */
  private static void feet(List<Double> places, double middle, double half, double size) {
    for (double at : new double[] {middle - half, middle + half}) {
      boolean inside = at >= HALF_PATCH && at <= size - HALF_PATCH;
      if (inside && places.stream().allMatch(p -> Math.abs(p - at) >= NEAREST)) {
        places.add(at);
      }
    }
  }

  /** The places that must be met, the two near the ends, and enough between them. */
  private static List<Double> filled(List<Double> must, double size, double apart) {
    List<Double> places = distinct(must.stream().mapToDouble(Double::doubleValue));
    double first = Math.min(HALF_PATCH, size / 4);
    if (places.get(0) - first >= NEAREST) {
      places.add(0, first);
    }
    if (size - first - places.get(places.size() - 1) >= NEAREST) {
      places.add(size - first);
    }
    List<Double> out = new ArrayList<>();
    for (int i = 0; i + 1 < places.size(); i++) {
      double gap = places.get(i + 1) - places.get(i);
      int pieces = evenly(gap, apart);
      for (int k = 0; k < pieces; k++) {
        out.add(places.get(i) + gap * k / pieces);
      }
    }
    out.add(places.get(places.size() - 1));
    return out;
  }

  /** Long gaps get an even number of pieces, so that their middle is met. */
  private static int evenly(double gap, double apart) {
    int pieces = (int) Math.ceil(gap / apart);
    return pieces > 1 && pieces % 2 == 1 ? pieces + 1 : pieces;
  }

  private static List<Double> distinct(DoubleStream places) {
    List<Double> out = new ArrayList<>();
    places
        .sorted()
        .forEach(
            p -> {
              if (out.isEmpty() || p - out.get(out.size() - 1) > 1e-6) {
                out.add(p);
              }
            });
    return out;
  }

  /** Width of the top that belongs to a line, mm. */
  public double share(int line) {
    return upper(lines, line, width) - lower(lines, line);
  }

  /** Length of the top that belongs to a station, mm. */
  public double reach(int station) {
    return upper(stations, station, length) - lower(stations, station);
  }

  /** Where the width that belongs to a line begins, mm from the front edge. */
  double front(int line) {
    return lower(lines, line);
  }

  /** Where the length that belongs to a station begins, mm from the left end. */
  double left(int station) {
    return lower(stations, station);
  }

  private static double lower(List<Double> places, int i) {
    return i == 0 ? 0 : (places.get(i - 1) + places.get(i)) / 2;
  }

  private static double upper(List<Double> places, int i, double size) {
    return i == places.size() - 1 ? size : (places.get(i) + places.get(i + 1)) / 2;
  }

  /** The line nearest to a place across the bench. */
  public int lineNear(double y) {
    return nearest(lines, y);
  }

  /** The station nearest to a place along the bench. */
  public int stationNear(double x) {
    return nearest(stations, x);
  }

  private static int nearest(List<Double> places, double at) {
    int best = 0;
    for (int i = 1; i < places.size(); i++) {
      if (Math.abs(places.get(i) - at) < Math.abs(places.get(best) - at)) {
        best = i;
      }
    }
    return best;
  }
}
