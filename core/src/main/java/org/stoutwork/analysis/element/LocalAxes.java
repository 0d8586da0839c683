package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.Vec3;

/**
 * Local axes of a member: unit vectors in global components.
 *
 * @param x along the member
 * @param y horizontal unless rolled or vertical
 * @param z completes the right-handed set
 */
public record LocalAxes(Vec3 x, Vec3 y, Vec3 z) {
  /** A member whose axis has a horizontal part below this counts as vertical. */
  public static final double VERTICAL = 1e-6;

  /** Axes of a member that runs along {@code axis}, turned by {@code roll} (rad) about itself. */
  public static LocalAxes along(Vec3 axis, double roll) {
    Vec3 x = axis.times(1 / axis.length());
    Vec3 y;
    if (Math.hypot(x.x(), x.y()) < VERTICAL) {
      // Global +y, made exactly square to a nearly vertical axis.
      Vec3 up = new Vec3(0, 1, 0);
      y = up.minus(x.times(up.dot(x)));
    } else {
      y = new Vec3(0, 0, 1).cross(x);
    }
    y = y.times(1 / y.length());
    Vec3 z = x.cross(y);
    double c = Math.cos(roll);
    double s = Math.sin(roll);
    return new LocalAxes(x, y.times(c).plus(z.times(s)), z.times(c).minus(y.times(s)));
  }

  /** Local components of a global vector. */
  public Vec3 toLocal(Vec3 global) {
    return new Vec3(x.dot(global), y.dot(global), z.dot(global));
  }

  /** Global components of a local vector. */
  public Vec3 toGlobal(Vec3 local) {
    return x.times(local.x()).plus(y.times(local.y())).plus(z.times(local.z()));
  }

  Vec3 axis(int index) {
    return index == 0 ? x : index == 1 ? y : z;
  }
}
