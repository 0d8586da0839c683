package org.stoutwork.report.drawing.draughting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/** Arrows for forces, moments and spread loads, each with its value. */
public final class Loads {

  private static final Stroke SHAFT = Stroke.of(0.45, Ink.ACCENT);
  private static final double HEAD = 2.6;

  private Loads() {}

  /**
   * A force.
   *
   * @param tip where it acts
   * @param degrees direction in which it pushes, counter-clockwise from right; −90 is downward
   * @param length of the arrow, mm, at least 4
   * @param markup its value, written at the tail
   * @param points size of the value
   */
  public static List<Mark> force(
      Point tip, double degrees, double length, String markup, double points) {
    if (!(length >= 4)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "a load arrow is at least 4 mm long on paper; %s mm was given", length));
    }
    Point tail = tip.polar(degrees, -length);
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Path(List.of(tail, tip.polar(degrees, -HEAD * 0.8)), SHAFT));
    marks.add(Arrowhead.at(tip, degrees, HEAD, Ink.ACCENT));
    marks.add(valueAt(tail, degrees + 180, markup, points));
    return marks;
  }

  /**
   * A load spread evenly along a level line, pushing down on it.
   *
   * @param from left end of the loaded line
   * @param to right end, at the same level
   * @param height of the band of arrows, mm
   * @param markup its value, over the middle
   * @param points size of the value
   */
  public static List<Mark> spread(
      Point from, Point to, double height, String markup, double points) {
    List<Mark> marks = new ArrayList<>();
    int gaps = Math.max(1, (int) Math.round(from.to(to) / 8));
    for (int i = 0; i <= gaps; i++) {
      Point tip = from.towards(to, (double) i / gaps);
      marks.add(
          new Mark.Path(
              List.of(tip.plus(0, -height), tip.plus(0, -1.2)), Stroke.of(0.25, Ink.ACCENT)));
      marks.add(Arrowhead.at(tip, -90, 1.6, Ink.ACCENT));
    }
    marks.add(new Mark.Path(List.of(from.plus(0, -height), to.plus(0, -height)), SHAFT));
    marks.add(label(from.towards(to, 0.5).plus(0, -height - 1), markup, points, Align.CENTRE));
    return marks;
  }

  /**
   * A moment in the plane of the paper.
   *
   * @param centre about which it turns
   * @param radius of the arc, mm
   * @param counterClockwise the way it turns
   * @param markup its value, right of the arc
   * @param points size of the value
   */
  public static List<Mark> moment(
      Point centre, double radius, boolean counterClockwise, String markup, double points) {
    double sweep = counterClockwise ? 250 : -250;
    double start = counterClockwise ? -35 : 215;
    double end = start + sweep - Math.signum(sweep) * Math.toDegrees(HEAD * 0.8 / radius);
    Point tip = centre.polar(start + sweep, radius);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Arc(centre, radius, start, end - start, Fill.NONE, java.util.Optional.of(SHAFT)));
    marks.add(Arrowhead.at(tip, centre.polar(end, radius).angleTo(tip), HEAD, Ink.ACCENT));
    marks.add(label(centre.plus(radius + 1.2, -radius * 0.6), markup, points, Align.LEFT));
    return marks;
  }

  private static Mark valueAt(Point tail, double away, String markup, double points) {
    double cap = TextMeasure.CAPITAL * points * TextMeasure.MM_PER_POINT;
    double x = Math.cos(Math.toRadians(away));
    double y = Math.sin(Math.toRadians(away));
    Align align = x > 0.35 ? Align.LEFT : x < -0.35 ? Align.RIGHT : Align.CENTRE;
    Point at = tail.polar(away, 1.1).plus(0, cap / 2 - y * cap / 2);
    return label(at, markup, points, align);
  }

  private static Mark label(Point at, String markup, double points, Align align) {
    return new Mark.Label(at, RichText.of(markup), points, align, 0, Ink.BLACK);
  }
}
