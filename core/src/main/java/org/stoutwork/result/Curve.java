package org.stoutwork.result;

import java.util.List;

/**
 * The axis of a member before and after it moved.
 *
 * @param part it belongs to
 * @param points along it
 */
public record Curve(String part, List<Point> points) {

  /** Keeps its own copy. */
  public Curve {
    points = List.copyOf(points);
  }

  /**
   * One point of the axis.
   *
   * @param x place before, mm
   * @param y place before, mm
   * @param z place before, mm
   * @param ux movement, mm
   * @param uy movement, mm
   * @param uz movement, mm
   */
  public record Point(double x, double y, double z, double ux, double uy, double uz) {}
}
