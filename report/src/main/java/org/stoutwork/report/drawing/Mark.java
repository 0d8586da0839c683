package org.stoutwork.report.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** One thing drawn on paper. */
public sealed interface Mark {

  /** The mark moved right and down, mm. */
  Mark moved(double dx, double dy);

  /**
   * A line through two or more points.
   *
   * @param points in order
   * @param stroke how it is drawn
   */
  record Path(List<Point> points, Stroke stroke) implements Mark {

    /**
     * @throws IllegalArgumentException if there are fewer than two points
     */
    public Path {
      points = List.copyOf(points);
      Objects.requireNonNull(stroke, "stroke");
      requireAtLeast(2, points, "a line");
    }

    @Override
    public Path moved(double dx, double dy) {
      return new Path(shift(points, dx, dy), stroke);
    }
  }

  /**
   * A closed shape with straight edges.
   *
   * @param points corners in order, the first not repeated
   * @param fill what fills it
   * @param outline how its edge is drawn; empty for none
   */
  record Polygon(List<Point> points, Fill fill, Optional<Stroke> outline) implements Mark {

    /**
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public Polygon {
      points = List.copyOf(points);
      Objects.requireNonNull(fill, "fill");
      Objects.requireNonNull(outline, "outline");
      requireAtLeast(3, points, "a polygon");
    }

    @Override
    public Polygon moved(double dx, double dy) {
      return new Polygon(shift(points, dx, dy), fill, outline);
    }
  }

  /**
   * Part of a circle, or all of it.
   *
   * @param centre of the circle
   * @param radius mm, above zero
   * @param start direction of the first end, degrees counter-clockwise from right
   * @param sweep degrees to the other end, positive counter-clockwise, at most 360 either way
   * @param fill of the disc; only a full circle may be filled
   * @param outline how the arc is drawn; empty for none
   */
  record Arc(
      Point centre, double radius, double start, double sweep, Fill fill, Optional<Stroke> outline)
      implements Mark {

    /**
     * @throws IllegalArgumentException if the radius is not above zero, the sweep beyond a circle,
     *     or an open arc is filled
     */
    public Arc {
      if (!(radius > 0) || !(Math.abs(sweep) <= 360) || !Double.isFinite(start)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "an arc needs a radius above 0 mm and a sweep within 360°; %s mm and %s° were given",
                radius,
                sweep));
      }
      if (Math.abs(sweep) < 360 && !(fill instanceof Fill.Empty)) {
        throw new IllegalArgumentException("only a full circle may be filled; draw a polygon");
      }
    }

    @Override
    public Arc moved(double dx, double dy) {
      return new Arc(centre.plus(dx, dy), radius, start, sweep, fill, outline);
    }

    /** Points along the arc, close enough to draw straight lines between. */
    public List<Point> polyline() {
      int steps = Math.max(2, (int) Math.ceil(Math.abs(sweep) / 7.5));
      return java.util.stream.IntStream.rangeClosed(0, steps)
          .mapToObj(i -> centre.polar(start + sweep * i / steps, radius))
          .toList();
    }
  }

  /**
   * One line of lettering.
   *
   * @param at where the base line meets the side or middle named by {@code align}
   * @param text what it says
   * @param points size of the type, 4 to 72
   * @param align which part of the text stands at the point
   * @param degrees turn about the point, counter-clockwise
   * @param ink its ink
   */
  record Label(Point at, RichText text, double points, Align align, double degrees, Ink ink)
      implements Mark {

    /**
     * @throws IllegalArgumentException if the size is outside 4 to 72 points
     */
    public Label {
      if (!(points >= 4 && points <= 72)) {
        throw new IllegalArgumentException(
            String.format(Locale.ROOT, "lettering is 4 to 72 points; %s was given", points));
      }
      Objects.requireNonNull(text, "text");
    }

    @Override
    public Label moved(double dx, double dy) {
      return new Label(at.plus(dx, dy), text, points, align, degrees, ink);
    }
  }

  private static void requireAtLeast(int least, List<Point> points, String what) {
    if (points.size() < least) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s needs at least %d points; %d were given",
              what,
              least,
              points.size()));
    }
  }

  private static List<Point> shift(List<Point> points, double dx, double dy) {
    return points.stream().map(p -> p.plus(dx, dy)).toList();
  }
}
