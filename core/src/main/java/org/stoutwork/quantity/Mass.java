package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A mass.
 *
 * @param kg the value in kg; finite
 */
public record Mass(double kg) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.KG;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Mass {
    Quantity.requireFinite(kg, UNIT);
  }

  /** A value in kg. */
  public static Mass ofKg(double value) {
    return new Mass(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Mass of(double value, Unit unit) {
    return new Mass(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 90 kg}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Mass parse(String text) {
    return new Mass(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return kg;
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
