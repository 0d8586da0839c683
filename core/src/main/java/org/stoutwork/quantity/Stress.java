package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A stress, a strength, a modulus or a pressure.
 *
 * @param mpa the value in MPa; finite
 */
public record Stress(double mpa) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.MPA;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Stress {
    Quantity.requireFinite(mpa, UNIT);
  }

  /** A value in MPa. */
  public static Stress ofMpa(double value) {
    return new Stress(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Stress of(double value, Unit unit) {
    return new Stress(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 11 GPa}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Stress parse(String text) {
    return new Stress(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return mpa;
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
