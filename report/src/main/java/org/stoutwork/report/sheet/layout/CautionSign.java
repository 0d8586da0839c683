package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Caution;

/** Draws the sign of a caution: a ring for a notice, a triangle for what may hurt. */
final class CautionSign {

  private static final double RADIUS = 4.2;

  private CautionSign() {}

  static List<Mark> marks(Caution.Grade grade, Point middle) {
    boolean solid = grade == Caution.Grade.WARNING || grade == Caution.Grade.DANGER;
    Fill fill = solid ? Fill.of(Ink.BLACK) : Fill.of(Ink.WHITE);
    Ink ink = solid ? Ink.WHITE : Ink.BLACK;
    List<Mark> marks = new ArrayList<>();
    if (grade == Caution.Grade.NOTICE) {
      Optional<Stroke> ring = Optional.of(Stroke.of(0.5, Ink.BLACK));
      marks.add(new Mark.Arc(middle, 3.2, 0, 360, fill, ring));
      marks.addAll(stem(middle, ink, true));
    } else {
      Point centre = middle.plus(0, 0.9);
      marks.add(
          new Mark.Polygon(
              List.of(
                  centre.polar(90, RADIUS), centre.polar(210, RADIUS), centre.polar(330, RADIUS)),
              fill,
              Optional.of(Stroke.of(0.5, Ink.BLACK))));
      marks.addAll(stem(centre.plus(0, -0.2), ink, false));
    }
    return marks;
  }

  /** An upright stroke with a dot over it (a notice) or under it (a call to beware). */
  private static List<Mark> stem(Point middle, Ink ink, boolean dotAbove) {
    double way = dotAbove ? -1 : 1;
    Point a = middle.plus(-0.35, way * -1.9);
    Point b = middle.plus(0.35, way * 0.5);
    return List.of(
        new Mark.Polygon(Sketch.corners(a, b), Fill.of(ink), Optional.empty()),
        new Mark.Arc(middle.plus(0, way * 1.35), 0.42, 0, 360, Fill.of(ink), Optional.empty()));
  }
}
