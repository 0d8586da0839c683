package org.stoutwork.quantity;

/** A value with its unit: the form in which numbers cross the boundary of the library. */
public sealed interface Quantity
    permits Length,
        Force,
        Mass,
        Stress,
        Moment,
        LineLoad,
        RotationalStiffness,
        Density,
        Angle,
        Measure {

  /** The number, in {@link #unit()}. */
  double value();

  /** The unit of the number. */
  Unit unit();

  /**
   * The number in another unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  default double in(Unit target) {
    return unit().convert(value(), target);
  }

  /** Refuses what is not a number. */
  static void requireFinite(double value, Unit unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "a quantity in %s must be a finite number; it was %s".formatted(unit.symbol(), value));
    }
  }
}
