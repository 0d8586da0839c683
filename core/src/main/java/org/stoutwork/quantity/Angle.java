package org.stoutwork.quantity;

import java.util.Optional;

/**
 * An angle.
 *
 * @param rad the value in rad; finite
 */
public record Angle(double rad) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.RAD;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Angle {
    Quantity.requireFinite(rad, UNIT);
  }

  /** A value in rad. */
  public static Angle ofRad(double value) {
    return new Angle(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Angle of(double value, Unit unit) {
    return new Angle(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 6 deg}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Angle parse(String text) {
    return new Angle(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return rad;
  }

  @Override
  public Unit unit() {
    return UNIT;
  }

  /** In degrees, as makers say it. */
  @Override
  public String toString() {
    return Writing.in(this, Unit.DEG, 4);
  }
}
