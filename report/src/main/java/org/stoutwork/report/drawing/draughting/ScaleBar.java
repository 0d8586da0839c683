package org.stoutwork.report.drawing.draughting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;

/** A bar of known real length, so that a copy at another size can still be measured. */
public final class ScaleBar {

  private static final double HEIGHT = 1.4;

  private ScaleBar() {}

  /**
   * A bar in equal fields, filled and open in turn.
   *
   * @param at its upper left corner; figures stand below it
   * @param view whose scale it shows
   * @param step real length of a field
   * @param fields how many, 1 to 10
   * @param unit written after the last figure
   * @param points size of the figures
   */
  public static List<Mark> at(
      Point at, View view, long step, int fields, String unit, double points) {
    if (step <= 0 || fields < 1 || fields > 10) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a scale bar has 1 to 10 fields of a length above 0; %d of %d were given",
              fields,
              step));
    }
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < fields; i++) {
      Point a = at.plus(view.length((double) i * step), 0);
      Point b = at.plus(view.length((i + 1.0) * step), HEIGHT);
      Fill fill = i % 2 == 0 ? Fill.of(Ink.BLACK) : Fill.of(Ink.WHITE);
      marks.add(new Mark.Polygon(Sketch.corners(a, b), fill, Optional.of(Stroke.THIN)));
    }
    double base = HEIGHT + 0.8 + points * 0.65 * 0.3528;
    marks.add(figure(at.plus(0, base), "0", points, Align.LEFT));
    String end = Long.toString(step * fields) + "\u00a0" + unit;
    marks.add(figure(at.plus(view.length((double) step * fields), base), end, points, Align.RIGHT));
    return marks;
  }

  private static Mark figure(Point at, String text, double points, Align align) {
    return new Mark.Label(at, RichText.plain(text), points, align, 0, Ink.BLACK);
  }
}
