package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * The values of a diagram, clear of its curve, its hatching and of one another: beyond the curve,
 * else on the other side of the axis, else beside the end. What finds no room is left out; those
 * asked for first come first. For one thread.
 */
final class DiagramLabels {

  private static final double POINTS = 9;
  private static final double ABOVE = 1.6;
  private static final double UNDER = 4;
  private static final double BESIDE = 2.5;
  private static final double CLEAR = 0.3;

  /** How far the axis runs past its ends, mm. */
  private static final double PAST = 1.5;

  private final List<Point> curve;
  private final double axis;
  private final TextMeasure measure;
  private final Bounds frame;
  private final List<Bounds> taken = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * @param curve from left to right; it may jump
   * @param axis level from which it is drawn
   * @param measure of the type
   * @param frame that no lettering leaves
   */
  DiagramLabels(List<Point> curve, double axis, TextMeasure measure, Bounds frame) {
    this.curve = List.copyOf(curve);
    this.axis = axis;
    this.measure = measure;
    this.frame = frame;
  }

  /** Writes a value of the curve where there is room. */
  void put(Point at, boolean under, String text) {
    RichText shown = RichText.plain(text);
    double half = measure.width(shown, POINTS) / 2 + 0.2;
    double x = Math.max(frame.left() + half, Math.min(frame.right() - half, at.x()));
    double left = curve.get(0).x();
    double right = curve.get(curve.size() - 1).x();
    List<Point> places = new ArrayList<>();
    places.add(new Point(x, under ? at.y() + UNDER : at.y() - ABOVE));
    places.add(new Point(x, under ? lowest(x, half) + UNDER : highest(x, half) - ABOVE));
    places.add(new Point(x, under ? axis - ABOVE : axis + UNDER));
    places.add(new Point(x, under ? highest(x, half) - ABOVE : lowest(x, half) + UNDER));
    if (at.x() - left < 1e-6) {
      places.add(new Point(left - BESIDE - half, at.y() + 1.1));
    }
    if (right - at.x() < 1e-6) {
      places.add(new Point(right + BESIDE + half, at.y() + 1.1));
    }
    for (Point place : places) {
      Mark label = new Mark.Label(place, shown, POINTS, Align.CENTRE, 0, Ink.BLACK);
      Bounds reach = Extent.of(label, measure);
      if (frame.holds(reach, 1e-6) && isFree(reach)) {
        taken.add(reach);
        marks.add(label);
        return;
      }
    }
  }

  private boolean isFree(Bounds reach) {
    boolean onAxis =
        reach.right() > curve.get(0).x() - PAST - CLEAR
            && reach.left() < curve.get(curve.size() - 1).x() + PAST + CLEAR
            && reach.top() < axis + CLEAR
            && reach.bottom() > axis - CLEAR;
    double half = (reach.right() - reach.left()) / 2 + CLEAR;
    double x = (reach.left() + reach.right()) / 2;
    boolean onCurve =
        reach.top() < lowest(x, half) + CLEAR && reach.bottom() > highest(x, half) - CLEAR;
    return !onAxis
        && !(onCurve && meetsCurve(reach))
        && taken.stream().noneMatch(b -> b.overlaps(reach.grown(0.6), 0));
  }

  /** Whether any piece of the curve, filled up to the axis, lies under the lettering. */
  private boolean meetsCurve(Bounds reach) {
    for (int i = 0; i + 1 < curve.size(); i++) {
      double[] levels = levels(i, reach.left() - CLEAR, reach.right() + CLEAR);
      if (levels.length > 0
          && reach.top() < Math.max(axis, levels[1]) + CLEAR
          && reach.bottom() > Math.min(axis, levels[0]) - CLEAR) {
        return true;
      }
    }
    return false;
  }

  /** The highest and the lowest level of a piece of the curve between two places; none outside. */
  private double[] levels(int piece, double from, double to) {
    Point a = curve.get(piece);
    Point b = curve.get(piece + 1);
    if (b.x() < from || a.x() > to) {
      return new double[0];
    }
    double run = b.x() - a.x();
    Point start = run < 1e-9 ? a : a.towards(b, Math.max(0, (from - a.x()) / run));
    Point end = run < 1e-9 ? b : a.towards(b, Math.min(1, (to - a.x()) / run));
    return new double[] {Math.min(start.y(), end.y()), Math.max(start.y(), end.y())};
  }

  /** The lowest level of curve and axis about a place: the largest y. */
  private double lowest(double x, double half) {
    double out = axis;
    for (int i = 0; i + 1 < curve.size(); i++) {
      double[] levels = levels(i, x - half, x + half);
      out = levels.length > 0 ? Math.max(out, levels[1]) : out;
    }
    return out;
  }

  /** The highest level of curve and axis about a place: the smallest y. */
  private double highest(double x, double half) {
    double out = axis;
    for (int i = 0; i + 1 < curve.size(); i++) {
      double[] levels = levels(i, x - half, x + half);
      out = levels.length > 0 ? Math.min(out, levels[0]) : out;
    }
    return out;
  }

  /** The lettering. */
  List<Mark> marks() {
    return List.copyOf(marks);
  }
}
