package org.stoutwork.report.sheet.math;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Level;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Run;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;

/** The shapes formulas are made of, in one size of type. */
final class Glyphs {

  /** Height of the middle of a fraction above the base line, in parts of the size. */
  private static final double AXIS = 0.24;

  private static final double BAR = 0.22;

  private final TextMeasure measure;
  private final double points;

  Glyphs(TextMeasure measure, double points) {
    this.measure = measure;
    this.points = points;
  }

  double em() {
    return points * TextMeasure.MM_PER_POINT;
  }

  /** Text on the base line. */
  MathBox text(RichText text) {
    boolean lowered = text.runs().stream().anyMatch(r -> r.level() == Level.SUB);
    boolean raised = text.runs().stream().anyMatch(r -> r.level() == Level.SUPER);
    Mark label = new Mark.Label(new Point(0, 0), text, points, Align.LEFT, 0, Ink.BLACK);
    return new MathBox(
        measure.width(text, points),
        (raised ? 0.9 : 0.7) * em(),
        (lowered ? 0.3 : 0.2) * em(),
        List.of(label));
  }

  MathBox plain(String text) {
    return text(RichText.plain(text));
  }

  /** Empty width, in parts of the size. */
  MathBox space(double parts) {
    return new MathBox(parts * em(), 0, 0, List.of());
  }

  /** One box over another with a bar between. */
  MathBox fraction(MathBox over, MathBox under) {
    double pad = 0.12 * em();
    double width = Math.max(over.width(), under.width()) + 2 * pad;
    double bar = AXIS * em();
    double gap = 0.2 * em();
    List<Mark> marks = new ArrayList<>();
    marks.addAll(over.at((width - over.width()) / 2, -(bar + gap + over.descent())));
    marks.addAll(under.at((width - under.width()) / 2, -bar + gap + under.ascent()));
    marks.add(rule(0, width, -bar));
    double side = 0.06 * em();
    MathBox box =
        new MathBox(
            width, bar + gap + over.height(), gap - bar + under.height(), List.copyOf(marks));
    MathBox space = new MathBox(side, 0, 0, List.of());
    return MathBox.row(List.of(space, box, space));
  }

  /** A box under a root sign. */
  MathBox root(MathBox inner) {
    double lead = 0.62 * em();
    double top = inner.ascent() + 0.14 * em();
    double foot = inner.descent();
    List<Mark> marks = new ArrayList<>(inner.at(lead, 0));
    double e = em();
    List<Point> hook =
        List.of(
            new Point(0.04 * e, -0.28 * e),
            new Point(0.17 * e, -0.36 * e),
            new Point(0.34 * e, foot),
            new Point(0.56 * e, -top),
            new Point(lead + inner.width() + 0.1 * e, -top));
    marks.add(new Mark.Path(hook, org.stoutwork.report.drawing.Stroke.of(BAR, Ink.BLACK)));
    return new MathBox(lead + inner.width() + 0.16 * e, top + 0.08 * e, foot + 0.04 * e, marks);
  }

  /** A box in round brackets as tall as it is. */
  MathBox bracketed(MathBox inner) {
    double tall = inner.height();
    double usual = 0.98 * em();
    if (tall <= 1.25 * usual) {
      return MathBox.row(List.of(plain("("), inner, plain(")")));
    }
    return MathBox.row(List.of(bracket(inner, true), inner, bracket(inner, false)));
  }

  private MathBox bracket(MathBox inner, boolean left) {
    double bulge = Math.min(0.3 * em(), 0.1 * inner.height());
    double half = inner.height() / 2;
    double middle = -(inner.ascent() - half);
    double radius = (bulge * bulge + half * half) / (2 * bulge);
    double angle = Math.toDegrees(Math.asin(half / radius));
    double side = 0.08 * em();
    double centre = left ? side + radius : side + bulge - radius;
    Mark arc =
        new Mark.Arc(
            new Point(centre, middle),
            radius,
            (left ? 180 : 0) - angle,
            2 * angle,
            Fill.NONE,
            Optional.of(org.stoutwork.report.drawing.Stroke.of(BAR, Ink.BLACK)));
    return new MathBox(bulge + 2 * side, inner.ascent(), inner.descent(), List.of(arc));
  }

  /** A box with a smaller one raised at its upper right. */
  MathBox power(MathBox base, MathBox exponent) {
    double rise = Math.max(0.34 * em(), base.ascent() - 0.36 * em());
    List<Mark> marks = new ArrayList<>(base.marks());
    marks.addAll(exponent.at(base.width() + 0.03 * em(), -rise));
    return new MathBox(
        base.width() + 0.06 * em() + exponent.width(),
        Math.max(base.ascent(), rise + exponent.ascent()),
        base.descent(),
        marks);
  }

  private static Mark rule(double from, double to, double y) {
    return new Mark.Polygon(
        Sketch.corners(new Point(from, y - BAR / 2), new Point(to, y + BAR / 2)),
        Fill.of(Ink.BLACK),
        Optional.empty());
  }

  /** A function's name or a unit: upright. */
  static RichText upright(String text) {
    return new RichText(List.of(Run.of(text, Face.REGULAR, Level.BASE)));
  }
}
