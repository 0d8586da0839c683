package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Dash;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.report.sheet.Verdict;

/**
 * Draws one utilisation bar on an axis from 0 to 1.5 with a limit line at 1.0. The verdict is in
 * the pattern of the bar and in its word; no ink carries meaning alone. A figure beyond the axis
 * ends in a slanting cut.
 */
final class BarMarks {

  /** Height of a bar, mm. */
  static final double HEIGHT = 3.0;

  private static final double END = 1.5;

  private final Type type;
  private final TextMeasure measure;

  /** Width kept at the right of the axis for a figure, mm. */
  private final double figure;

  BarMarks(Type type, TextMeasure measure) {
    this.type = type;
    this.measure = measure;
    this.figure = measure.width(RichText.plain("88.88", Face.BOLD), type.points()) + 1;
  }

  /** Where the upper edge of a bar lies whose figure stands on the given base line, mm. */
  double top(double baseline) {
    return baseline - TextMeasure.CAPITAL * type.em() / 2 - HEIGHT / 2;
  }

  /** Width that the longest word of a verdict needs, mm. */
  double wordWidth() {
    double widest = 0;
    for (Verdict verdict : Verdict.values()) {
      widest = Math.max(widest, measure.width(word(verdict), type.points()));
    }
    return widest;
  }

  /** How far right of a strip's left edge the limit stands, for a strip of the given width. */
  double limit(double width) {
    return (width - figure) / END;
  }

  /** The word of a verdict as text. */
  static RichText word(Verdict verdict) {
    return RichText.plain(verdict.words(), verdict == Verdict.ADEQUATE ? Face.REGULAR : Face.BOLD);
  }

  /** The shapes of a bar in a strip of the given width, its upper left corner at a point. */
  List<Mark> shapes(Utilisation utilisation, Point corner, double width) {
    double axis = width - figure;
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Path(
            List.of(corner.plus(0, HEIGHT), corner.plus(axis, HEIGHT)), Stroke.of(0.13, Ink.MID)));
    if (utilisation.value().isPresent()) {
      double length = length(utilisation.value().getAsDouble(), axis);
      marks.add(bar(utilisation, corner, Math.max(length, 0.3), axis));
      utilisation.favourable().ifPresent(v -> range(corner, length(v, axis), length, marks));
    } else {
      marks.add(
          new Mark.Polygon(
              Sketch.corners(corner, corner.plus(axis / END, HEIGHT)),
              Fill.NONE,
              Optional.of(Stroke.THIN.dashed(Dash.DASHED))));
    }
    limitLine(corner.plus(axis / END, 0), marks);
    return marks;
  }

  /** The limit, with a white edge so that it shows on a solid bar. */
  private static void limitLine(Point limit, List<Mark> marks) {
    marks.add(
        new Mark.Path(
            List.of(limit.plus(0, 0.1), limit.plus(0, HEIGHT - 0.1)), Stroke.of(1.2, Ink.WHITE)));
    marks.add(
        new Mark.Path(
            List.of(limit.plus(0, -0.8), limit.plus(0, HEIGHT + 0.8)),
            Stroke.of(0.45, Ink.ACCENT)));
  }

  /** The figure at the bar's end, clear of the limit line. */
  Mark number(Utilisation utilisation, Point corner, double width) {
    double axis = width - figure;
    double limit = axis / END;
    RichText text = RichText.plain(utilisation.figure(), Face.BOLD);
    double end =
        utilisation.value().isPresent() ? length(utilisation.value().getAsDouble(), axis) : limit;
    double wide = measure.width(text, type.points());
    boolean fitsBefore = end + 1 + wide + 0.8 <= limit;
    double x = fitsBefore ? end + 1 : Math.max(end, limit) + 1;
    double base = HEIGHT / 2 + TextMeasure.CAPITAL * type.em() / 2;
    return new Mark.Label(corner.plus(x, base), text, type.points(), Align.LEFT, 0, Ink.BLACK);
  }

  private static double length(double value, double axis) {
    return Math.min(value, END) / END * axis;
  }

  private static Mark bar(Utilisation utilisation, Point corner, double length, double axis) {
    boolean beyond = utilisation.value().orElse(0) > END;
    double slant = beyond ? HEIGHT * 0.6 : 0;
    List<Point> shape =
        List.of(
            corner,
            corner.plus(Math.min(length, axis), 0),
            corner.plus(length - slant, HEIGHT),
            corner.plus(0, HEIGHT));
    return new Mark.Polygon(shape, fill(utilisation.verdict()), Optional.of(Stroke.THIN));
  }

  private static Fill fill(Verdict verdict) {
    return switch (verdict) {
      case ADEQUATE -> Fill.of(Ink.MIST);
      case MARGINAL -> Fill.hatch(45, 0.9);
      case INADEQUATE -> Fill.of(Ink.BLACK);
      case NOT_CHECKED -> Fill.NONE;
    };
  }

  private static void range(Point corner, double from, double to, List<Mark> marks) {
    double level = HEIGHT + 0.75;
    Stroke stroke = Stroke.of(0.3, Ink.BLACK);
    marks.add(new Mark.Path(List.of(corner.plus(from, level), corner.plus(to, level)), stroke));
    for (double x : new double[] {from, to}) {
      marks.add(
          new Mark.Path(List.of(corner.plus(x, level - 0.5), corner.plus(x, level + 0.5)), stroke));
    }
  }
}
