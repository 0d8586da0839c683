package org.stoutwork.analysis.model;

/**
 * A point or vector in space; mm for places, N or N mm for loads.
 *
 * @param x first component
 * @param y second component
 * @param z third component
 */
public record Vec3(double x, double y, double z) {
  /** The null vector. */
  public static final Vec3 ZERO = new Vec3(0, 0, 0);

  /** Checks that the components are finite numbers. */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          "a vector needs finite components, not (" + x + ", " + y + ", " + z + ")");
    }
  }

  /** Sum of both. */
  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  /** This minus the other. */
  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  /** This multiplied by a number. */
  public Vec3 times(double factor) {
    return new Vec3(factor * x, factor * y, factor * z);
  }

  /** Scalar product. */
  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Vector product, this times other. */
  public Vec3 cross(Vec3 other) {
    return new Vec3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Euclidean length. */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /** Components as a new array. */
  public double[] toArray() {
    return new double[] {x, y, z};
  }

  /** The vector with the three components of {@code a} from {@code at} on. */
  public static Vec3 of(double[] a, int at) {
    return new Vec3(a[at], a[at + 1], a[at + 2]);
  }
}
