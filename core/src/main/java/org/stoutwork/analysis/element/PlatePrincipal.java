package org.stoutwork.analysis.element;

/**
 * The two extreme values of a plane symmetric tensor and where they point.
 *
 * @param larger algebraically larger value
 * @param smaller algebraically smaller value
 * @param angle of the larger one from x towards y, rad, above -π/2 and not above π/2
 */
public record PlatePrincipal(double larger, double smaller, double angle) {
  /** From the components x, y and xy. */
  static PlatePrincipal of(double x, double y, double xy) {
    double middle = (x + y) / 2;
    double radius = Math.hypot((x - y) / 2, xy);
    return new PlatePrincipal(middle + radius, middle - radius, 0.5 * Math.atan2(2 * xy, x - y));
  }
}
