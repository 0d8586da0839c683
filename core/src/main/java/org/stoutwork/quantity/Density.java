package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A density.
 *
 * @param kgPerM3 the value in kg/m³; finite
 */
public record Density(double kgPerM3) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.KG_PER_M3;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Density {
    Quantity.requireFinite(kgPerM3, UNIT);
  }

  /** A value in kg/m³. */
  public static Density ofKgPerM3(double value) {
    return new Density(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Density of(double value, Unit unit) {
    return new Density(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 680 kg/m³}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Density parse(String text) {
    return new Density(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return kgPerM3;
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
