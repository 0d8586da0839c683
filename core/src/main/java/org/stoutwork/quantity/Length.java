package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A length or a distance.
 *
 * @param mm the value in mm; finite
 */
public record Length(double mm) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.MM;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Length {
    Quantity.requireFinite(mm, UNIT);
  }

  /** A value in mm. */
  public static Length ofMm(double value) {
    return new Length(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Length of(double value, Unit unit) {
    return new Length(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 70 mm}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Length parse(String text) {
    return new Length(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return mm;
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
