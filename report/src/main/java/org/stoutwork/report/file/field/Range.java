package org.stoutwork.report.file.field;

import org.stoutwork.report.file.tree.ShortNumber;

/**
 * The numbers a key may have.
 *
 * @param min lower end
 * @param minIncluded whether the lower end itself is allowed
 * @param max upper end
 * @param maxIncluded whether the upper end itself is allowed
 */
public record Range(double min, boolean minIncluded, double max, boolean maxIncluded) {

  private static final double NO_END = Double.POSITIVE_INFINITY;

  /** Any finite number. */
  public static final Range ANY = new Range(-NO_END, false, NO_END, false);

  /** Any number above 0. */
  public static final Range POSITIVE = above(0);

  /** 0 and any number above. */
  public static final Range NOT_NEGATIVE = atLeast(0);

  /** Checks the order. */
  public Range {
    if (!(min <= max)) {
      throw new IllegalArgumentException(
          "a range from " + min + " to " + max + " holds nothing; give the smaller end first");
    }
  }

  /** Numbers above an end that is itself not allowed. */
  public static Range above(double min) {
    return new Range(min, false, NO_END, false);
  }

  /** Numbers from an end on. */
  public static Range atLeast(double min) {
    return new Range(min, true, NO_END, false);
  }

  /** Numbers from one end to the other, both allowed. */
  public static Range between(double min, double max) {
    return new Range(min, true, max, true);
  }

  /** Whether a number is allowed. */
  public boolean contains(double value) {
    boolean above = minIncluded ? value >= min : value > min;
    boolean below = maxIncluded ? value <= max : value < max;
    return above && below;
  }

  /**
   * The range as the end of a noun: nothing, or for instance {@code above 0}, with a blank first.
   */
  String words() {
    boolean hasMin = min != -NO_END;
    boolean hasMax = max != NO_END;
    String from = hasMin ? (minIncluded ? " of at least " : " above ") + ShortNumber.of(min) : "";
    String to = hasMax ? (maxIncluded ? " of at most " : " below ") + ShortNumber.of(max) : "";
    if (hasMin && hasMax && minIncluded && maxIncluded) {
      return " from " + ShortNumber.of(min) + " to " + ShortNumber.of(max);
    }
    return from + (hasMin && hasMax ? " and" : "") + to;
  }
}
