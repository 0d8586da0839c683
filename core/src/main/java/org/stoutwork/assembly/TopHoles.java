package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.section.PiercedStrip;

/**
 * The dog holes of a top as its models see them. A strip of the grillage loses stiffness by the
 * mean of its whole and its pierced lengths, and is taken net wherever it may be pierced: a hole
 * may stand where the strip is used most. The plate gets a strip of {@link PanelSection#withHoles}
 * along each row.
 */
final class TopHoles {

  /** Of a strip narrower than its holes this part is left, so that its neighbours take over. */
  private static final double LEAST_LEFT = 0.1;

  /** Side of the square that has the area of a circle, over the diameter, turned round. */
  private static final double ROUND_FOR_SQUARE = 2 / Math.sqrt(Math.PI);

  /** Elements narrower than this are not made, mm. */
  private static final double SLIVER = 2;

  private final List<DogHoles> rows;
  private final TopGrid grid;
  private final double thickness;

  TopHoles(Bench bench, TopGrid grid) {
    this.rows = bench.top().dogHoles();
    this.grid = grid;
    this.thickness = bench.top().thicknessMm();
  }

  /** What is left of the bending stiffness of a strip along the bench, above 0, at most 1. */
  double leftAlong(int line) {
    double flexible = 0;
    for (DogHoles row : rows) {
      double pierced = row.count() * row.size().mm() / grid.length();
      flexible += more(pierced, width(row, line), grid.share(line));
    }
    return 1 / (1 + flexible);
  }

  /** What is left of the bending stiffness of a strip across the bench, above 0, at most 1. */
  double leftAcross(int station) {
    double flexible = 0;
    for (DogHoles row : rows) {
      double pierced = row.size().mm() / grid.width();
      flexible += more(pierced, length(row, station), grid.reach(station));
    }
    return 1 / (1 + flexible);
  }

  /** By how much a strip b wide is more flexible for being pierced over a part of its length. */
  private static double more(double part, double hole, double b) {
    return new PiercedStrip(b, Math.min(hole, (1 - LEAST_LEFT) * b), part).added();
  }

  /** What is cut out of a strip along the bench, at its stations. */
  List<Mortise> alongCuts(int line) {
    List<Mortise> out = new ArrayList<>();
    List<Double> stations = grid.stations();
    for (int k = 0; k < stations.size(); k++) {
      double hole = 0;
      for (DogHoles row : rows) {
        double half = row.size().mm() / 2;
        if (touches(stations, k, row.atMm(0) - half, row.lastMm() + half)) {
          hole += width(row, line);
        }
      }
      cut(out, hole, grid.share(line), stations.get(k) - stations.get(0));
    }
    return out;
  }

  /** What is cut out of a strip across the bench, at its lines. */
  List<Mortise> acrossCuts(int station) {
    List<Mortise> out = new ArrayList<>();
    List<Double> lines = grid.lines();
    for (int i = 0; i < lines.size(); i++) {
      double hole = 0;
      for (DogHoles row : rows) {
        double half = row.size().mm() / 2;
        if (touches(lines, i, row.fromFront().mm() - half, row.fromFront().mm() + half)) {
          hole = Math.max(hole, length(row, station));
        }
      }
      cut(out, hole, grid.reach(station), lines.get(i) - lines.get(0));
    }
    return out;
  }

  private void cut(List<Mortise> out, double hole, double b, double at) {
    if (hole > 0) {
      double taken = Math.min(hole, (1 - LEAST_LEFT) * b);
      out.add(new Mortise("dog holes", at, taken, 0, thickness, 0, at - 0.5, at + 0.5));
    }
  }

  /** Whether something between two places stands before or behind a place, nearest of its kind. */
  private static boolean touches(List<Double> places, int i, double from, double to) {
    double before = i == 0 ? Double.NEGATIVE_INFINITY : places.get(i - 1);
    double behind = i == places.size() - 1 ? Double.POSITIVE_INFINITY : places.get(i + 1);
    return from < behind && to > before;
  }

  private double width(DogHoles row, int line) {
    return row.across(grid.front(line), grid.front(line) + grid.share(line));
  }

  private double length(DogHoles row, int station) {
    return row.within(grid.left(station), grid.left(station) + grid.reach(station));
  }

  /** Lays a strip of holes over the plate along each row. */
  void lay(PanelBuilder panel, PanelSection whole) {
    for (DogHoles row : rows) {
      double d = roundMm(row);
      double spacing = Math.max(row.spacing().mm(), d);
      double y = row.fromFront().mm();
      panel.zone(
          snapped(row.atMm(0) - spacing / 2, grid.stations(), grid.length()),
          snapped(y - d / 2, grid.lines(), grid.width()),
          snapped(row.lastMm() + spacing / 2, grid.stations(), grid.length()),
          snapped(y + d / 2, grid.lines(), grid.width()),
          whole.withHoles(d, spacing));
    }
  }

  /** A place on the plate, moved onto a line nearby: a sliver between them would be no element. */
  private static double snapped(double at, List<Double> places, double size) {
    double inside = Math.max(0, Math.min(size, at));
    double found =
        Math.min(inside, size - inside) < SLIVER ? (inside < size / 2 ? 0 : size) : inside;
    for (double place : places) {
      if (Math.abs(place - inside) < SLIVER) {
        found = place;
      }
    }
    return found;
  }

  /** Diameter of the round hole that has the area of one of a row, mm. */
  private static double roundMm(DogHoles row) {
    return row.shape() == DogHoles.Shape.ROUND
        ? row.size().mm()
        : ROUND_FOR_SQUARE * row.size().mm();
  }

  /** What the holes take out of the face of a top, mm². */
  static double areaMm2(Bench bench) {
    double sum = 0;
    for (DogHoles row : bench.top().dogHoles()) {
      sum += row.count() * Math.PI / 4 * roundMm(row) * roundMm(row);
    }
    return sum;
  }
}
