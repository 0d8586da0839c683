package org.stoutwork.report.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Collects marks one after another into a drawing. For one thread, and used once. */
public final class Sketch {

  /** Type of figures unless something else is asked for, points. */
  public static final double USUAL_TYPE = 9;

  private final List<Mark> marks = new ArrayList<>();

  /** Adds any mark. */
  public Sketch add(Mark mark) {
    marks.add(mark);
    return this;
  }

  /** Adds marks that somebody else made, such as a dimension line. */
  public Sketch add(Collection<? extends Mark> several) {
    marks.addAll(several);
    return this;
  }

  /** A straight line. */
  public Sketch line(Point from, Point to, Stroke stroke) {
    return add(new Mark.Path(List.of(from, to), stroke));
  }

  /** A line through several points. */
  public Sketch path(List<Point> points, Stroke stroke) {
    return add(new Mark.Path(points, stroke));
  }

  /** A closed shape. */
  public Sketch polygon(List<Point> corners, Fill fill, Stroke outline) {
    return add(new Mark.Polygon(corners, fill, Optional.of(outline)));
  }

  /** A closed shape without an outline. */
  public Sketch area(List<Point> corners, Fill fill) {
    return add(new Mark.Polygon(corners, fill, Optional.empty()));
  }

  /** An upright rectangle between two opposite corners. */
  public Sketch rectangle(Point a, Point b, Fill fill, Stroke outline) {
    return polygon(corners(a, b), fill, outline);
  }

  /** A full circle. */
  public Sketch circle(Point centre, double radius, Fill fill, Stroke outline) {
    return add(new Mark.Arc(centre, radius, 0, 360, fill, Optional.of(outline)));
  }

  /** Part of a circle. */
  public Sketch arc(Point centre, double radius, double start, double sweep, Stroke stroke) {
    return add(new Mark.Arc(centre, radius, start, sweep, Fill.NONE, Optional.of(stroke)));
  }

  /** Lettering of the usual size; the text is {@link Markup}. */
  public Sketch text(Point at, String markup, Align align) {
    return text(at, RichText.of(markup), USUAL_TYPE, align, 0);
  }

  /** Lettering. */
  public Sketch text(Point at, RichText text, double points, Align align, double degrees) {
    return add(new Mark.Label(at, text, points, align, degrees, Ink.BLACK));
  }

  /** Lettering of the usual size on a white ground, for use over lines and hatching. */
  public Sketch backedText(Point at, String markup, Align align, TextMeasure measure) {
    Mark label = new Mark.Label(at, RichText.of(markup), USUAL_TYPE, align, 0, Ink.BLACK);
    Bounds reach = Extent.of(label, measure).grown(0.4);
    area(
        corners(new Point(reach.left(), reach.top()), new Point(reach.right(), reach.bottom())),
        Fill.of(Ink.WHITE));
    return add(label);
  }

  /** The marks so far. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** The drawing, in a frame that the caller knows. */
  public Drawing drawing(double width, double height) {
    return new Drawing(width, height, marks);
  }

  /** The drawing, moved and framed so that everything is inside with a margin, mm. */
  public Drawing fitted(TextMeasure measure, double margin) {
    Bounds reach = Extent.of(marks, measure).grown(margin);
    List<Mark> moved = marks.stream().map(m -> m.moved(-reach.left(), -reach.top())).toList();
    return new Drawing(reach.width(), reach.height(), moved);
  }

  /** The corners of an upright rectangle between two opposite ones. */
  public static List<Point> corners(Point a, Point b) {
    return List.of(a, new Point(b.x(), a.y()), b, new Point(a.x(), b.y()));
  }
}
