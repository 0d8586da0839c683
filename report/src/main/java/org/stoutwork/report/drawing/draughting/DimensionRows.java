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
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * Puts dimensions in rows beside a view: each goes to the row nearest to the view in which neither
 * its line nor its figure meets another, nor its figure an extension line. For one thread.
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
  private final List<Wanted> wanted = new ArrayList<>();

  private record Wanted(Point from, Point to, RichText figure, int leastRow) {}

  /** A dimension in its row: where its figure stands, and what of the row it takes. */
  private record Placed(
      Wanted wanted, int row, FigurePlace figure, double lowest, double highest) {}

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
    if (from.to(to) >= 0.2) {
      wanted.add(new Wanted(from, to, RichText.of(figure), leastRow));
    }
    return this;
  }

  private double along(Point p) {
    return level ? p.x() : p.y();
  }

  private double low(Wanted w) {
    return Math.min(along(w.from()), along(w.to()));
  }

  private double high(Wanted w) {
    return Math.max(along(w.from()), along(w.to()));
  }

  /** Where each dimension goes, in the order in which they were asked for. */
  private List<Placed> placed() {
    List<Placed> done = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      done.add(place(wanted.get(i), done, wanted.subList(i + 1, wanted.size())));
    }
    return done;
  }

  /** Every row far enough out is free, and a figure finds room beyond all extension lines. */
  private Placed place(Wanted w, List<Placed> done, List<Wanted> later) {
    for (int row = w.leastRow(); ; row++) {
      FigurePlace figure = figure(w, row, done, later);
      double lowest = Math.min(low(w) - 0.5, figure.low() - APART);
      double highest = Math.max(high(w) + 0.5, figure.high() + APART);
      Placed tried = new Placed(w, row, figure, lowest, highest);
      if (done.stream().noneMatch(other -> meet(other, tried))) {
        return tried;
      }
    }
  }

  private static boolean meet(Placed a, Placed b) {
    return a.row() == b.row()
        && Math.min(a.highest(), b.highest()) - Math.max(a.lowest(), b.lowest()) > 1.1;
  }

  /** The figure clear of the extension lines that pass the row: those of it and of later rows. */
  private FigurePlace figure(Wanted w, int row, List<Placed> done, List<Wanted> later) {
    List<Double> lines = new ArrayList<>();
    for (Placed other : done) {
      if (other.row() >= row) {
        ends(other.wanted(), lines);
      }
    }
    // What is still to come may land farther out than this row, and is kept clear of too.
    later.forEach(other -> ends(other, lines));
    List<double[]> spans = new ArrayList<>();
    done.stream().filter(o -> o.row() == row).forEach(o -> spans.add(span(o.wanted())));
    later.stream().filter(o -> o.leastRow() <= row).forEach(o -> spans.add(span(o)));
    double width = measure.width(w.figure(), POINTS);
    return FigurePlace.of(low(w), high(w), width, level ? 1 : -1, lines, spans);
  }

  private double[] span(Wanted w) {
    return new double[] {low(w), high(w)};
  }

  private void ends(Wanted w, List<Double> lines) {
    lines.add(along(w.from()));
    lines.add(along(w.to()));
  }

  /** The dimensions: their lines, then their figures on a white ground over all lines. */
  public List<Mark> marks() {
    List<Mark> lines = new ArrayList<>();
    List<Mark> figures = new ArrayList<>();
    for (Placed p : placed()) {
      double place = first + p.row() * step;
      Wanted w = p.wanted();
      lines.addAll(
          dimensions.lines(w.from(), w.to(), at(along(w.from()), place), at(along(w.to()), place)));
      p.figure()
          .line()
          .ifPresent(l -> lines.add(dimensions.line(at(l[0], place), at(l[1], place))));
      Mark label =
          dimensions.figureAt(
              at(p.figure().middle(), place), level ? 0 : 90, w.figure(), p.figure().inside());
      Bounds b = Extent.of(label, measure);
      List<Point> ground =
          Sketch.corners(new Point(b.left(), b.top()), new Point(b.right(), b.bottom()));
      figures.add(new Mark.Polygon(ground, Fill.of(Ink.WHITE), Optional.empty()));
      figures.add(label);
    }
    lines.addAll(figures);
    return lines;
  }

  private Point at(double along, double place) {
    return level ? new Point(along, place) : new Point(place, along);
  }
}
