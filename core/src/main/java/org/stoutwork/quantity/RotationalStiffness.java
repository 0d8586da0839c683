package org.stoutwork.quantity;

import java.util.Optional;

/**
 * The stiffness of a joint against rotation.
 *
 * @param nmmPerRad the value in N·mm/rad; finite
 */
public record RotationalStiffness(double nmmPerRad) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.N_MM_PER_RAD;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public RotationalStiffness {
    Quantity.requireFinite(nmmPerRad, UNIT);
  }

  /** A value in N·mm/rad. */
  public static RotationalStiffness ofNmmPerRad(double value) {
    return new RotationalStiffness(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static RotationalStiffness of(double value, Unit unit) {
    return new RotationalStiffness(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 15 kN·m/rad}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static RotationalStiffness parse(String text) {
    return new RotationalStiffness(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return nmmPerRad;
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
