package org.stoutwork.report.figure;

/**
 * A piece of a bench as an upright box; mm, X along, Y from the front, Z up.
 *
 * @param mark letter by which the drawing and the list of parts name it
 * @param kind how it is drawn
 * @param x0 left
 * @param x1 right
 * @param y0 front
 * @param y1 back
 * @param z0 foot
 * @param z1 head
 */
public record Box(
    String mark, Kind kind, double x0, double x1, double y0, double y1, double z0, double z1) {

  /** How a box is drawn. */
  public enum Kind {
    TOP,
    LEG,
    RAIL,
    FOOT,
    STRETCHER,
    /** Size known only in part: shown by a dashed outline. */
    OUTLINE
  }

  static Box of(String mark, Kind kind, double[] x, double[] y, double[] z) {
    return new Box(mark, kind, x[0], x[1], y[0], y[1], z[0], z[1]);
  }

  /** Both ends of a size about its middle. */
  static double[] about(double middle, double size) {
    return new double[] {middle - size / 2, middle + size / 2};
  }

  /** Both ends. */
  static double[] from(double low, double high) {
    return new double[] {low, high};
  }
}
