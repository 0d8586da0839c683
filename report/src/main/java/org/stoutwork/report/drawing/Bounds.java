package org.stoutwork.report.drawing;

import java.util.Collection;

/**
 * An upright rectangle on paper.
 *
 * @param left x of the left edge, mm
 * @param top y of the upper edge, mm
 * @param right x of the right edge, mm
 * @param bottom y of the lower edge, mm
 */
public record Bounds(double left, double top, double right, double bottom) {

  /** The smallest rectangle round some points; there must be at least one. */
  public static Bounds around(Collection<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("bounds need at least one point; none was given");
    }
    double l = Double.POSITIVE_INFINITY;
    double t = Double.POSITIVE_INFINITY;
    double r = Double.NEGATIVE_INFINITY;
    double b = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      l = Math.min(l, p.x());
      t = Math.min(t, p.y());
      r = Math.max(r, p.x());
      b = Math.max(b, p.y());
    }
    return new Bounds(l, t, r, b);
  }

  /** The smallest rectangle that holds this one and another. */
  public Bounds and(Bounds other) {
    return new Bounds(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** Larger on all sides by a margin, mm. */
  public Bounds grown(double margin) {
    return new Bounds(left - margin, top - margin, right + margin, bottom + margin);
  }

  /** Moved right and down, mm. */
  public Bounds moved(double dx, double dy) {
    return new Bounds(left + dx, top + dy, right + dx, bottom + dy);
  }

  /** Whether another rectangle lies inside, give or take a tolerance, mm. */
  public boolean holds(Bounds inner, double tolerance) {
    return inner.left >= left - tolerance
        && inner.top >= top - tolerance
        && inner.right <= right + tolerance
        && inner.bottom <= bottom + tolerance;
  }

  /** Whether this and another rectangle share more than a tolerance in both directions, mm. */
  public boolean overlaps(Bounds other, double tolerance) {
    return Math.min(right, other.right) - Math.max(left, other.left) > tolerance
        && Math.min(bottom, other.bottom) - Math.max(top, other.top) > tolerance;
  }

  /** Width, mm. */
  public double width() {
    return right - left;
  }

  /** Height, mm. */
  public double height() {
    return bottom - top;
  }
}
