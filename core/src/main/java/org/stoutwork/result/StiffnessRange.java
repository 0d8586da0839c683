package org.stoutwork.result;

import java.util.function.DoubleUnaryOperator;

/**
 * A value at the low, mean and high stiffness of the joints.
 *
 * @param low with joints at their softest
 * @param mean with joints at their mean
 * @param high with joints at their stiffest
 */
public record StiffnessRange(double low, double mean, double high) {

  /** All three, each changed alike. */
  public StiffnessRange each(DoubleUnaryOperator change) {
    return new StiffnessRange(
        change.applyAsDouble(low), change.applyAsDouble(mean), change.applyAsDouble(high));
  }

  /** All three times a factor. */
  public StiffnessRange times(double factor) {
    return each(value -> value * factor);
  }

  /** The largest of the three. */
  public double largest() {
    return Math.max(low, Math.max(mean, high));
  }

  /** The smallest of the three. */
  public double smallest() {
    return Math.min(low, Math.min(mean, high));
  }
}
