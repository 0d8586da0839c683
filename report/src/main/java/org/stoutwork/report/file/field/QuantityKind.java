package org.stoutwork.report.file.field;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.stoutwork.quantity.Dimension;
import org.stoutwork.quantity.Quantity;
import org.stoutwork.quantity.QuantityFault;
import org.stoutwork.quantity.QuantityText;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/**
 * A kind of scalar with a unit, and the range it may have.
 *
 * @param noun what is needed, with its article and examples
 * @param range what is allowed, as the end of the noun: empty, or {@code above 0 mm}
 * @param unit the unit of the ends and of the values built
 * @param bare the unit of a bare number; empty when a bare number is refused
 * @param ends the range in {@code unit}
 * @param make builds the value from a number in {@code unit}
 * @param <Q> the quantity
 */
public record QuantityKind<Q extends Quantity>(
    String noun, String range, Unit unit, Optional<Unit> bare, Range ends, DoubleFunction<Q> make) {

  static <Q extends Quantity> QuantityKind<Q> of(String noun, Unit unit, DoubleFunction<Q> make) {
    return new QuantityKind<>(noun, "", unit, Optional.empty(), Range.ANY, make);
  }

  /** The same, but only values above an end. */
  public QuantityKind<Q> above(Q min) {
    return ranged(" above " + words(min), Range.above(min.in(unit)));
  }

  /** The same, but only values from an end on. */
  public QuantityKind<Q> atLeast(Q min) {
    return ranged(" of at least " + words(min), Range.atLeast(min.in(unit)));
  }

  /** The same, but only values from one end to the other. */
  public QuantityKind<Q> between(Q min, Q max) {
    return ranged(
        " from " + words(min) + " to " + words(max), Range.between(min.in(unit), max.in(unit)));
  }

  /** The same, but bare numbers are read, in a unit. */
  public QuantityKind<Q> bareIn(Unit bareUnit) {
    return new QuantityKind<>(noun, range, unit, Optional.of(bareUnit), ends, make);
  }

  QuantityKind<Q> orBareIn(Optional<Unit> bareUnit) {
    return bare.isPresent() || bareUnit.isEmpty() ? this : bareIn(bareUnit.get());
  }

  Dimension dimension() {
    return unit.dimension();
  }

  /** The kind of scalar. */
  public Kind<Q> kind() {
    return Kind.of(noun + range, this::parse, QuantityKind::words);
  }

  /** Six digits are enough to tell any size apart; a plain blank can be typed again. */
  private static String words(Quantity quantity) {
    return Writing.in(quantity, quantity.unit(), 6).replace('\u00a0', ' ');
  }

  private QuantityKind<Q> ranged(String words, Range newEnds) {
    return new QuantityKind<>(noun, words, unit, bare, newEnds, make);
  }

  private Q parse(String text) throws NotUnderstood {
    double value;
    try {
      value = QuantityText.read(text, unit, bare);
    } catch (QuantityFault e) {
      throw new NotUnderstood(e.getMessage(), QuantityRepair.question(text, unit, bare));
    }
    if (!ends.contains(value)) {
      throw new NotUnderstood("", "");
    }
    return make.apply(value);
  }
}
