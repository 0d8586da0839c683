package org.stoutwork.quantity;

/**
 * What kind of thing a unit measures, as exponents of length, mass and time. Angles are kept apart
 * so that degrees are not read where a plain ratio is wanted; in formulas they count as ratios.
 *
 * @param length exponent of length
 * @param mass exponent of mass
 * @param time exponent of time
 * @param angle exponent of angle
 */
public record Dimension(int length, int mass, int time, int angle) {

  /** A plain ratio. */
  public static final Dimension RATIO = new Dimension(0, 0, 0, 0);

  /** The dimension of a product. */
  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length, mass + other.mass, time + other.time, angle + other.angle);
  }

  /** The dimension of a whole power. */
  public Dimension power(int n) {
    return new Dimension(length * n, mass * n, time * n, angle * n);
  }
}
