package org.stoutwork.quantity;

/**
 * Any value with any unit: for results whose kind is only known by the unit, such as a demand that
 * may be a stress, a force or a deflection.
 *
 * @param value finite number in {@code unit}
 * @param unit the unit of the number
 */
public record Measure(double value, Unit unit) implements Quantity {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Measure {
    Quantity.requireFinite(value, unit);
  }

  @Override
  public String toString() {
    return Writing.plain(this);
  }
}
