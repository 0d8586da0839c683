package org.stoutwork.joint;

import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/** A joint that cannot be made; names the part, its value, the limit and a repair. */
public final class JointFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String part;
  private final double value;
  private final double limit;
  private final String given;
  private final String allowed;

  private JointFault(String part, double value, double limit, String given, String allowed) {
    super("%s %s: %s".formatted(part, given, allowed));
    this.part = part;
    this.value = value;
    this.limit = limit;
    this.given = given;
    this.allowed = allowed;
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

  /** The refused value in words, such as {@code 60 mm}. */
  public String given() {
    return given;
  }

  /** What is allowed and why, such as {@code at most 44 mm, the thickness of the rail}. */
  public String allowed() {
    return allowed;
  }

  /** Refuses a length above its limit. */
  static void requireAtMost(String part, double value, double limit, String why) {
    if (!(value <= limit)) {
      throw new JointFault(
          part, value, limit, mm(value), "at most %s, %s".formatted(mm(limit), why));
    }
  }

  /**
   * A limit of a length and why.
   *
   * @param mm the most that is allowed
   * @param why in words
   */
  record Most(double mm, String why) {

    private String words() {
      return "at most %s, %s".formatted(JointFault.mm(mm), why);
    }
  }

  /** Refuses a length above either of two limits; the tighter one is named first. */
  static void requireAtMost(String part, double value, Most one, Most other) {
    Most tighter = other.mm() < one.mm() ? other : one;
    Most wider = other.mm() < one.mm() ? one : other;
    if (!(value <= tighter.mm())) {
      String allowed =
          value <= wider.mm() ? tighter.words() : tighter.words() + "; and " + wider.words();
      throw new JointFault(part, value, tighter.mm(), mm(value), allowed);
    }
  }

  /** Refuses a length below its limit. */
  static void requireAtLeast(String part, double value, double limit, String why) {
    if (!(value >= limit)) {
      throw new JointFault(
          part, value, limit, mm(value), "at least %s, %s".formatted(mm(limit), why));
    }
  }

  /** Refuses a length that is not above nought. */
  static void requirePositive(String part, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new JointFault(part, value, 0, mm(value), "it must be above 0 mm");
    }
  }

  /** Refuses a count outside its range. */
  static void requireCount(String part, int value, int least, int most) {
    if (value < least || value > most) {
      throw new JointFault(
          part, value, most, Integer.toString(value), "between %s and %s".formatted(least, most));
    }
  }

  private static String mm(double value) {
    return Writing.with(value, Unit.MM, 4);
  }
}
