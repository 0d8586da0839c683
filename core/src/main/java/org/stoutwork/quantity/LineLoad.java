package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A force spread along a line, or the stiffness of a straight spring.
 *
 * @param nPerMm the value in N/mm; finite
 */
public record LineLoad(double nPerMm) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.N_PER_MM;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public LineLoad {
    Quantity.requireFinite(nPerMm, UNIT);
  }

  /** A value in N/mm. */
  public static LineLoad ofNPerMm(double value) {
    return new LineLoad(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static LineLoad of(double value, Unit unit) {
    return new LineLoad(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 1.2 kN/m}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static LineLoad parse(String text) {
    return new LineLoad(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return nPerMm;
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
