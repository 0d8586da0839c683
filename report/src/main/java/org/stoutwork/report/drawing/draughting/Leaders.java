package org.stoutwork.report.drawing.draughting;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/** Leaders: a note beside the drawing and a line to what it speaks of. */
public final class Leaders {

  private static final double SHOULDER = 3;

  private Leaders() {}

  /**
   * A note with a line that ends in a dot on what it names.
   *
   * @param target the named place
   * @param elbow where the slanting line meets the note's short level line
   * @param markup the note, on the far side of the elbow
   * @param points its size
   */
  public static List<Mark> dotted(Point target, Point elbow, String markup, double points) {
    List<Mark> marks = line(target, elbow, markup, points);
    marks.add(new Mark.Arc(target, 0.45, 0, 360, Fill.of(Ink.BLACK), java.util.Optional.empty()));
    return marks;
  }

  /** A note with an arrow that touches what it names. */
  public static List<Mark> pointed(Point target, Point elbow, String markup, double points) {
    List<Mark> marks = line(target, elbow, markup, points);
    marks.add(Arrowhead.at(target, elbow.angleTo(target), 2, Ink.BLACK));
    return marks;
  }

  private static List<Mark> line(Point target, Point elbow, String markup, double points) {
    boolean right = elbow.x() >= target.x();
    Point end = elbow.plus(right ? SHOULDER : -SHOULDER, 0);
    double drop = TextMeasure.CAPITAL / 2 * points * TextMeasure.MM_PER_POINT;
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Path(List.of(target, elbow, end), Stroke.THIN));
    marks.add(
        new Mark.Label(
            end.plus(right ? 0.8 : -0.8, drop),
            RichText.of(markup),
            points,
            right ? Align.LEFT : Align.RIGHT,
            0,
            Ink.BLACK));
    return marks;
  }
}
