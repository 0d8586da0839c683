package org.stoutwork.joint;

import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/** A joint that cannot be made; names the part, its value, the limit and a repair. */
public final class JointFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String part;
  private final double value;
  private final double limit;

  private JointFault(String part, double value, double limit, String message) {
    super(message);
    this.part = part;
    this.value = value;
    this.limit = limit;
  }

  /** The part of the joint, such as {@code tenon thickness}. */
  public String part() {
    return part;
  }

  /** The refused value, in the unit of the message. */
  public double value() {
    return value;
  }

  /** The limit it passed. */
  public double limit() {
    return limit;
  }

  /** Refuses a length above its limit. */
  static void requireAtMost(String part, double value, double limit, String why) {
    if (!(value <= limit)) {
      throw new JointFault(
          part, value, limit, "%s %s: at most %s, %s".formatted(part, mm(value), mm(limit), why));
    }
  }

  /** Refuses a length below its limit. */
  static void requireAtLeast(String part, double value, double limit, String why) {
    if (!(value >= limit)) {
      throw new JointFault(
          part, value, limit, "%s %s: at least %s, %s".formatted(part, mm(value), mm(limit), why));
    }
  }

  /** Refuses a length that is not above nought. */
  static void requirePositive(String part, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new JointFault(
          part, value, 0, "%s %s: it must be above 0 mm".formatted(part, mm(value)));
    }
  }

  /** Refuses a count outside its range. */
  static void requireCount(String part, int value, int least, int most) {
    if (value < least || value > most) {
      throw new JointFault(
          part, value, most, "%s %d: between %d and %d".formatted(part, value, least, most));
    }
  }

  private static String mm(double value) {
    return Writing.with(value, Unit.MM, 4);
  }
}
