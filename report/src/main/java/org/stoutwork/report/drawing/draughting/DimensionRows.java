package org.stoutwork.report.drawing.draughting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * Puts dimensions in rows beside a view: each goes to the row nearest to the view in which neither
 * its line nor its figure meets another. For one thread.
 */
public final class DimensionRows {

  private static final double PITCH = 5.2;
  private static final double POINTS = 9;
  private static final double APART = 0.8;

  private final TextMeasure measure;
  private final Dimensions dimensions;
  private final boolean level;
  private final double first;
  private final double step;
  private final List<List<double[]>> taken = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * Rows without a dimension yet.
   *
   * @param measure of the type
   * @param level whether the rows are level, below or above the view; else they stand beside it
   * @param first place of the row nearest to the view, mm on paper
   * @param outward +1 where further rows lie below or to the right, else −1
   */
  public DimensionRows(TextMeasure measure, boolean level, double first, int outward) {
    this.measure = measure;
    this.dimensions = new Dimensions(measure, POINTS);
    this.level = level;
    this.first = first;
    this.step = outward * PITCH;
  }

  /** Adds the distance of two places, in the nearest row with room from the given one on. */
  public DimensionRows add(Point from, Point to, String figure, int leastRow) {
    if (from.to(to) < 0.2) {
      return this;
    }
    for (int row = leastRow; ; row++) {
      while (taken.size() <= row) {
        taken.add(new ArrayList<>());
      }
      List<Mark> tried = at(row, from, to, figure);
      double[] reach = reach(tried);
      if (taken.get(row).stream().noneMatch(other -> meet(other, reach))) {
        taken.get(row).add(reach);
        marks.addAll(tried);
        return this;
      }
    }
  }

  private List<Mark> at(int row, Point from, Point to, String figure) {
    double place = first + row * step;
    return level
        ? dimensions.horizontal(from, to, place, figure)
        : dimensions.vertical(from, to, place, figure);
  }

  /** From where to where a dimension reaches along its row: its ticks and its figure. */
  private double[] reach(List<Mark> dimension) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Mark mark : dimension) {
      if (mark instanceof Mark.Label) {
        Bounds b = Extent.of(mark, measure).grown(APART);
        low = Math.min(low, level ? b.left() : b.top());
        high = Math.max(high, level ? b.right() : b.bottom());
      }
    }
    Mark.Path line = (Mark.Path) dimension.get(dimension.size() - 4);
    for (Point p : line.points()) {
      double along = level ? p.x() : p.y();
      low = Math.min(low, along + 1);
      high = Math.max(high, along - 1);
    }
    return new double[] {low, high};
  }

  private static boolean meet(double[] a, double[] b) {
    return Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > 1.1;
  }

  /** The dimensions so far: their lines, then their figures on a white ground over all lines. */
  public List<Mark> marks() {
    List<Mark> lines = new ArrayList<>();
    List<Mark> figures = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Label) {
        Bounds b = Extent.of(mark, measure);
        List<Point> ground =
            Sketch.corners(new Point(b.left(), b.top()), new Point(b.right(), b.bottom()));
        figures.add(new Mark.Polygon(ground, Fill.of(Ink.WHITE), Optional.empty()));
        figures.add(mark);
      } else {
        lines.add(mark);
      }
    }
    lines.addAll(figures);
    return lines;
  }
}
