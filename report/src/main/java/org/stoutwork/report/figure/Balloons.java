package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * Letters in circles that name parts: on the part where it is large enough, else beside it with a
 * leader. None covers another. For one thread.
 */
final class Balloons {

  private static final double RADIUS = 2.5;
  private static final double POINTS = 8.5;
  private static final double[] PLACES = {0.5, 0.36, 0.64, 0.22, 0.78, 0.1, 0.9};
  private static final double[] AWAY = {5, 9, 13, 17};

  private final List<Bounds> taken = new ArrayList<>();

  /**
   * The balloon of a part that fills a rectangle on paper; empty if there is no room for it.
   *
   * @param part its rectangle
   * @param letter of the part
   * @param upFirst whether a balloon beside it stands rather above it than below
   */
  List<Mark> on(Bounds part, String letter, boolean upFirst) {
    for (double t : PLACES) {
      Point on = along(part, t);
      if (Math.min(part.width(), part.height()) >= 2 * RADIUS && free(on)) {
        return balloon(on, letter);
      }
    }
    for (double away : AWAY) {
      for (int side : new int[] {upFirst ? -1 : 1, upFirst ? 1 : -1}) {
        for (double t : PLACES) {
          Point on = along(part, t);
          boolean flat = part.width() >= part.height();
          double off = side * away;
          Point beside = flat ? on.plus(1.5, off) : on.plus(off, 1.5);
          if (free(beside)) {
            return led(on, beside, letter);
          }
        }
      }
    }
    return List.of();
  }

  private static Point along(Bounds b, double t) {
    boolean flat = b.width() >= b.height();
    return new Point(
        b.left() + b.width() * (flat ? t : 0.5), b.top() + b.height() * (flat ? 0.5 : t));
  }

  private boolean free(Point at) {
    Bounds circle = new Bounds(at.x(), at.y(), at.x(), at.y()).grown(RADIUS + 0.3);
    return taken.stream().noneMatch(b -> b.overlaps(circle, 0));
  }

  private List<Mark> balloon(Point at, String letter) {
    taken.add(new Bounds(at.x(), at.y(), at.x(), at.y()).grown(RADIUS));
    double drop = TextMeasure.CAPITAL / 2 * POINTS * TextMeasure.MM_PER_POINT;
    return List.of(
        new Mark.Arc(
            at, RADIUS, 0, 360, Fill.of(Ink.WHITE), Optional.of(Stroke.of(0.25, Ink.ACCENT))),
        new Mark.Label(
            at.plus(0, drop),
            RichText.plain(letter, Face.BOLD),
            POINTS,
            Align.CENTRE,
            0,
            Ink.BLACK));
  }

  private List<Mark> led(Point on, Point beside, String letter) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Path(List.of(on, beside), Stroke.of(0.25, Ink.ACCENT)));
    marks.add(new Mark.Arc(on, 0.45, 0, 360, Fill.of(Ink.ACCENT), Optional.empty()));
    marks.addAll(balloon(beside, letter));
    return marks;
  }
}
