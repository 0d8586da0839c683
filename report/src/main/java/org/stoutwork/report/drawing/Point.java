package org.stoutwork.report.drawing;

import java.util.Locale;

/**
 * A place on paper.
 *
 * @param x millimetres to the right of the left edge
 * @param y millimetres below the upper edge
 */
public record Point(double x, double y) {

  /**
   * @throws IllegalArgumentException if a coordinate is not a finite number
   */
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "a point on paper needs finite coordinates; (%s, %s) was given", x, y));
    }
  }

  /** This point moved by so many millimetres right and down. */
  public Point plus(double right, double down) {
    return new Point(x + right, y + down);
  }

  /** The point at a distance from this one in a direction, degrees counter-clockwise from right. */
  public Point polar(double degrees, double distance) {
    double angle = Math.toRadians(degrees);
    return new Point(x + distance * Math.cos(angle), y - distance * Math.sin(angle));
  }

  /** Distance to another point, mm. */
  public double to(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** Direction to another point, degrees counter-clockwise from right. */
  public double angleTo(Point other) {
    return Math.toDegrees(Math.atan2(y - other.y, other.x - x));
  }

  /** The point part way to another: 0 here, 1 there. */
  public Point towards(Point other, double part) {
    return new Point(x + (other.x - x) * part, y + (other.y - y) * part);
  }
}
