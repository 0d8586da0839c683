package org.stoutwork.check.service;

import java.util.List;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.check.GoverningCase;

/**
 * How far the top sags at a place, measured from straight lines between its supports: along the
 * bench from end frame to end frame, across it from leg to leg; beyond the last support the line
 * runs on.
 *
 * @param grid of the top
 * @param along stations of the end frames, rising
 * @param across lines of the legs, rising
 */
record SagLine(TopGrid grid, List<Integer> along, List<Integer> across) {

  static SagLine of(Bench bench, TopGrid grid) {
    List<Integer> along =
        bench.endFrames().stream().map(f -> grid.stationNear(f.at().mm())).toList();
    EndFrame first = bench.endFrames().get(0);
    List<Integer> across =
        List.of(
            grid.lineNear(Layout.frontLegY(first)), grid.lineNear(Layout.backLegY(bench, first)));
    return new SagLine(grid, along, across);
  }

  /** Heights of the top's crossings. */
  interface Heights {
    /** Upward movement, mm. */
    double at(int line, int station);
  }

  /** The movement of every crossing under one result. */
  static Heights of(org.stoutwork.analysis.solve.FrameResult result) {
    return (line, station) -> result.displacement(TopLoads.node(line, station))[2];
  }

  /** Sag of a spot in its direction, mm. */
  double sag(Heights heights, SagSpot spot) {
    return spot.along()
        ? along(heights, spot.line(), spot.station())
        : across(heights, spot.line(), spot.station());
  }

  /** Span of a spot in its direction, mm. */
  double span(SagSpot spot) {
    return spot.along() ? spanAlong(spot.station()) : spanAcross(spot.line());
  }

  /** Whether a spot is a support itself, where nothing can sag. */
  boolean onSupport(SagSpot spot) {
    return spot.along() ? onSupportAlong(spot.station()) : onSupportAcross(spot.line());
  }

  /** Sag below the line along the bench, mm; negative if the top rises. */
  double along(Heights heights, int line, int station) {
    int[] pair = supports(along, station);
    double x = grid.stations().get(station);
    double a = grid.stations().get(pair[0]);
    double b = grid.stations().get(pair[1]);
    double t = (x - a) / (b - a);
    double chord = heights.at(line, pair[0]) * (1 - t) + heights.at(line, pair[1]) * t;
    return chord - heights.at(line, station);
  }

  /** Sag below the line across the bench, mm. */
  double across(Heights heights, int line, int station) {
    int[] pair = supports(across, line);
    double y = grid.lines().get(line);
    double a = grid.lines().get(pair[0]);
    double b = grid.lines().get(pair[1]);
    double t = (y - a) / (b - a);
    double chord = heights.at(pair[0], station) * (1 - t) + heights.at(pair[1], station) * t;
    return chord - heights.at(line, station);
  }

  /** The movements whose sum is the sag along or across the bench. */
  List<GoverningCase.Term> terms(boolean along, int line, int station) {
    int at = along ? station : line;
    int[] pair = supports(along ? this.along : across, at);
    List<Double> places = along ? grid.stations() : grid.lines();
    double a = places.get(pair[0]);
    double t = (places.get(at) - a) / (places.get(pair[1]) - a);
    return List.of(
        up(along, line, station, pair[0], 1 - t),
        up(along, line, station, pair[1], t),
        up(along, line, station, at, -1));
  }

  private static GoverningCase.Term up(
      boolean along, int line, int station, int place, double factor) {
    String node = along ? TopLoads.node(line, place) : TopLoads.node(place, station);
    return new GoverningCase.Term(node, Direction.UZ, factor);
  }

  /** Span along the bench that a place belongs to; twice the overhang beyond the last frame, mm. */
  double spanAlong(int station) {
    return span(along, grid.stations(), station);
  }

  /** Span across the bench that a place belongs to; twice the overhang beyond the legs, mm. */
  double spanAcross(int line) {
    return span(across, grid.lines(), line);
  }

  private static double span(List<Integer> supports, List<Double> places, int at) {
    double x = places.get(at);
    double first = places.get(supports.get(0));
    double last = places.get(supports.get(supports.size() - 1));
    if (x < first) {
      return 2 * (first - x);
    }
    if (x > last) {
      return 2 * (x - last);
    }
    int[] pair = supports(supports, at);
    return places.get(pair[1]) - places.get(pair[0]);
  }

  private static int[] supports(List<Integer> supports, int at) {
    int k = 0;
    while (k + 2 < supports.size() && at > supports.get(k + 1)) {
      k++;
    }
    return new int[] {supports.get(k), supports.get(k + 1)};
  }

  /** Whether a place is a support itself, where nothing can sag along. */
  boolean onSupportAlong(int station) {
    return along.contains(station);
  }

  /** Whether a place is a support itself, where nothing can sag across. */
  boolean onSupportAcross(int line) {
    return across.contains(line);
  }
}
