package org.stoutwork.analysis.element;

/** Bilinear interpolation on a rectangle, corners (0,0), (a,0), (a,b), (0,b). */
public final class PlateShape {
  private PlateShape() {}

  /**
   * Parts of the four corners at a place.
   *
   * @param s distance along as a part of the side, 0 to 1
   * @param t distance across as a part of the side, 0 to 1
   */
  public static double[] at(double s, double t) {
    return new double[] {(1 - s) * (1 - t), s * (1 - t), s * t, (1 - s) * t};
  }
}
