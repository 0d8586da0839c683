package org.stoutwork.analysis.model;

/**
 * Where the middle surface of a panel lies in space.
 *
 * @param origin its corner left and front, mm
 * @param along unit vector of its x
 * @param across unit vector of its y, at right angles to {@code along}
 */
public record PanelPlace(Vec3 origin, Vec3 along, Vec3 across) {
  /**
   * Brings both directions to unit length.
   *
   * @throws IllegalArgumentException when they are null or not at right angles
   */
  public PanelPlace {
    double a = along.length();
    double b = across.length();
    if (!(a > 0) || !(b > 0) || Math.abs(along.dot(across)) > 1e-9 * a * b) {
      throw new IllegalArgumentException(
          "a panel needs two directions at right angles, not "
              + along
              + " and "
              + across
              + "; change one of them");
    }
    along = along.times(1 / a);
    across = across.times(1 / b);
  }

  /** Flat, x and y as the global ones. */
  public static PanelPlace flat(Vec3 origin) {
    return new PanelPlace(origin, new Vec3(1, 0, 0), new Vec3(0, 1, 0));
  }

  /** Unit normal, along × across. */
  public Vec3 normal() {
    return along.cross(across);
  }

  /** The place in space of a point of the panel, mm. */
  public Vec3 inSpace(double x, double y) {
    return origin.plus(along.times(x)).plus(across.times(y));
  }
}
