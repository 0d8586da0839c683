package org.stoutwork.analysis.model;

/**
 * A rectangle on a panel, in panel coordinates.
 *
 * @param x0 left side, mm
 * @param y0 front side, mm
 * @param x1 right side, mm
 * @param y1 back side, mm
 */
public record PanelArea(double x0, double y0, double x1, double y1) {
  /** Checks that the sides are in order. */
  public PanelArea {
    if (!(x1 > x0) || !(y1 > y0) || !Double.isFinite(x1 - x0) || !Double.isFinite(y1 - y0)) {
      throw new IllegalArgumentException(
          "an area on a panel needs x0 < x1 and y0 < y1, not x from "
              + x0
              + " to "
              + x1
              + " and y from "
              + y0
              + " to "
              + y1);
    }
  }

  /** True for places inside or on the sides. */
  public boolean contains(double x, double y) {
    return x >= x0 && x <= x1 && y >= y0 && y <= y1;
  }
}
