package org.stoutwork.quantity;

import java.util.Optional;

/**
 * A moment, or an energy.
 *
 * @param nmm the value in N·mm; finite
 */
public record Moment(double nmm) implements Quantity {

  /** The unit of the number inside. */
  public static final Unit UNIT = Unit.N_MM;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Moment {
    Quantity.requireFinite(nmm, UNIT);
  }

  /** A value in N·mm. */
  public static Moment ofNmm(double value) {
    return new Moment(value);
  }

  /**
   * A value in any unit of the same kind.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public static Moment of(double value, Unit unit) {
    return new Moment(unit.convert(value, UNIT));
  }

  /**
   * Reads a text such as {@code 12 N·m}.
   *
   * @throws QuantityFault if the text is no such quantity
   */
  public static Moment parse(String text) {
    return new Moment(QuantityText.read(text, UNIT, Optional.empty()));
  }

  @Override
  public double value() {
    return nmm;
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
