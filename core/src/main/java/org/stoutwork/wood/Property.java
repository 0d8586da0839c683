package org.stoutwork.wood;

import java.util.Objects;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;

/**
 * One number about a wood: never without its unit and its source.
 *
 * @param value finite, in {@code unit}
 * @param unit of the value
 * @param source where the value comes from
 */
public record Property(double value, Unit unit, Source source) {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Property {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "a property must be a finite number of %s; it was %s".formatted(unit.symbol(), value));
    }
    Objects.requireNonNull(source, "source");
  }

  /**
   * A value that the user brings along.
   *
   * @param where the user found it: compulsory
   * @throws IllegalArgumentException if {@code where} is blank or the value is not above zero
   */
  public static Property yours(double value, Unit unit, String where) {
    if (where.isBlank()) {
      throw new IllegalArgumentException(
          "a value of your own needs its source, such as a data sheet or a test; none was given");
    }
    if (!(value > 0)) {
      throw new IllegalArgumentException(
          "a value of your own must be above zero; it was %s %s".formatted(value, unit.symbol()));
    }
    return new Property(value, unit, Source.yours(where));
  }

  /** How far the source was checked. */
  public Mark mark() {
    return source.mark();
  }

  /** The value with its unit and source, in one line. */
  public String line() {
    return Writing.with(value, unit, Writing.USUAL_DIGITS) + "  [" + source.line() + "]";
  }
}
