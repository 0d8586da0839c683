package org.stoutwork.report.drawing.draughting;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * Dimension lines: extension lines from the measured points, a line with an oblique tick at either
 * end, and the figure over the line, readable from below or from the right.
 */
public final class Dimensions {

  private static final double GAP = 1.0;
  private static final double PAST = FigurePlace.PAST;
  private static final double TICK = 1.1;

  private final TextMeasure measure;
  private final double points;

  /** Dimensions lettered in the given size, points. */
  public Dimensions(TextMeasure measure, double points) {
    this.measure = measure;
    this.points = points;
  }

  /**
   * The dimension between two points, along the line that joins them.
   *
   * @param from one measured point
   * @param to the other
   * @param offset how far the dimension line stands off, mm on paper; positive to the left of the
   *     way from one to the other
   * @param markup the figure
   */
  public List<Mark> aligned(Point from, Point to, double offset, String markup) {
    double angle = from.angleTo(to);
    Point a = from.polar(angle + 90, offset);
    Point b = to.polar(angle + 90, offset);
    return build(List.of(from, to), a, b, markup);
  }

  /** The horizontal distance of two points, measured along a level of the paper. */
  public List<Mark> horizontal(Point from, Point to, double level, String markup) {
    return build(List.of(from, to), new Point(from.x(), level), new Point(to.x(), level), markup);
  }

  /** The vertical distance of two points, measured along an upright line of the paper. */
  public List<Mark> vertical(Point from, Point to, double across, String markup) {
    return build(List.of(from, to), new Point(across, from.y()), new Point(across, to.y()), markup);
  }

  private List<Mark> build(List<Point> measured, Point a, Point b, String markup) {
    List<Mark> marks = lines(measured.get(0), measured.get(1), a, b);
    marks.add(figure(a, b, a.angleTo(b), markup));
    return marks;
  }

  /** The lines of a dimension from a to b without its figure: extensions, line and ticks. */
  List<Mark> lines(Point from, Point to, Point a, Point b) {
    List<Mark> marks = new ArrayList<>();
    double angle = a.angleTo(b);
    extension(from, a, marks);
    extension(to, b, marks);
    marks.add(line(a.polar(angle, -PAST), b.polar(angle, PAST)));
    marks.add(tick(a, angle));
    marks.add(tick(b, angle));
    return marks;
  }

  /** A piece of a dimension line. */
  Mark line(Point a, Point b) {
    return new Mark.Path(List.of(a, b), Stroke.THIN);
  }

  /**
   * A figure about a place on its dimension line.
   *
   * @param middle on the line
   * @param angle of the lettering, degrees
   * @param text of the figure
   * @param over whether it stands over the line; else the line ends before it
   */
  Mark figureAt(Point middle, double angle, RichText text, boolean over) {
    Point base = over ? middle.polar(angle + 90, 0.9) : middle.polar(angle - 90, capHalf());
    return new Mark.Label(base, text, points, Align.CENTRE, angle, Ink.BLACK);
  }

  private static void extension(Point measured, Point end, List<Mark> marks) {
    double length = measured.to(end);
    if (length > GAP) {
      double angle = measured.angleTo(end);
      marks.add(
          new Mark.Path(List.of(measured.polar(angle, GAP), end.polar(angle, PAST)), Stroke.HAIR));
    }
  }

  private static Mark tick(Point at, double angle) {
    return new Mark.Path(
        List.of(at.polar(angle + 45, TICK), at.polar(angle + 45, -TICK)),
        Stroke.of(0.35, Ink.BLACK));
  }

  private Mark figure(Point a, Point b, double angle, String markup) {
    RichText text = RichText.of(markup);
    double upright = Reading.upright(angle);
    double width = measure.width(text, points);
    Point middle = a.towards(b, 0.5).polar(upright + 90, 0.9);
    if (width <= a.to(b) - 2 * TICK) {
      return new Mark.Label(middle, text, points, Align.CENTRE, upright, Ink.BLACK);
    }
    Point end = upright == angle ? b : a;
    Point beside = end.polar(upright, PAST + 0.8).polar(upright - 90, capHalf());
    return new Mark.Label(beside, text, points, Align.LEFT, upright, Ink.BLACK);
  }

  private double capHalf() {
    return TextMeasure.CAPITAL / 2 * points * TextMeasure.MM_PER_POINT;
  }
}
