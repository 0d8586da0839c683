package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A force.
 *
 * @param newtons the value in N; finite
 */
public record Force(double newtons) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.N;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Force {
    Quantity.requireFinite(newtons, UNIT);
  }

  /** A value in N. */
  public static Force ofNewtons(double value) {
    return new Force(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Force of(double value, Unit unit) {
    return new Force(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 200 lbf}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Force parse(String text) {
    return new Force(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return newtons;
  }

  @Override
  public Unit unit() {
    return UNIT;
  }

  @Override
  public String toString() {
    return Writing.plain(this);
  }
}
