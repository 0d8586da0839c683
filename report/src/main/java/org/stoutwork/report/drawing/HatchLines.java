package org.stoutwork.report.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts the lines of a hatching to the inside of a polygon (even-odd rule). */
public final class HatchLines {

  private HatchLines() {}

  /** The hatch lines inside a polygon, each as its two ends. */
  public static List<List<Point>> within(List<Point> polygon, Fill.Hatch hatch) {
    double angle = Math.toRadians(hatch.degrees());
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    List<Point> turned = polygon.stream().map(p -> turn(p, c, s)).toList();
    Bounds bounds = Bounds.around(turned);
    List<List<Point>> lines = new ArrayList<>();
    double first = Math.ceil(bounds.top() / hatch.spacing()) * hatch.spacing();
    for (int i = 0; first + i * hatch.spacing() < bounds.bottom(); i++) {
      double level = first + i * hatch.spacing();
      double[] cuts = crossings(turned, level);
      for (int k = 0; k + 1 < cuts.length; k += 2) {
        lines.add(List.of(turn(cuts[k], level, c, -s), turn(cuts[k + 1], level, c, -s)));
      }
    }
    return lines;
  }

  private static double[] crossings(List<Point> polygon, double level) {
    double[] cuts = new double[polygon.size()];
    int n = 0;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      if (a.y() <= level != b.y() <= level) {
        cuts[n++] = a.x() + (level - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
      }
    }
    double[] found = Arrays.copyOf(cuts, n);
    Arrays.sort(found);
    return found;
  }

  private static Point turn(Point p, double c, double s) {
    return turn(p.x(), p.y(), c, s);
  }

  private static Point turn(double x, double y, double c, double s) {
    return new Point(x * c - y * s, x * s + y * c);
  }
}
