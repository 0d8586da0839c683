package org.stoutwork.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Writes numbers and quantities for people: significant digits, a true minus sign, a decimal point,
 * and no dependence on the machine's locale.
 */
public final class Writing {

  /** Digits shown where nothing else is asked for. */
  public static final int USUAL_DIGITS = 3;

  private static final double LARGEST_PLAIN = 1e9;
  private static final double SMALLEST_PLAIN = 1e-4;

  private Writing() {}

  /** A quantity in its own unit with the usual digits. */
  public static String plain(Quantity quantity) {
    return with(quantity.value(), quantity.unit(), USUAL_DIGITS);
  }

  /** A quantity in a unit of the reader's choice. */
  public static String in(Quantity quantity, Unit unit, int digits) {
    return with(quantity.in(unit), unit, digits);
  }

  /** A number with its unit. */
  public static String with(double value, Unit unit, int digits) {
    return unit.symbol().isEmpty() ? number(value, digits) : number(value, digits) + gap(unit);
  }

  private static String gap(Unit unit) {
    return (unit == Unit.DEG || unit == Unit.PERCENT ? "" : "\u00a0") + unit.symbol();
  }

  /**
   * A number to so many significant digits. Whole numbers below 100 000 are never rounded away:
   * 1340 stays 1340 at three digits.
   */
  public static String number(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "unlimited" : "\u2212unlimited";
    }
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    String text =
        size >= LARGEST_PLAIN || size < SMALLEST_PLAIN
            ? powerOfTen(size, digits)
            : trimmed(rounded(size, digits));
    return value < 0 ? "\u2212" + text : text;
  }

  private static BigDecimal rounded(double size, int digits) {
    BigDecimal exact = new BigDecimal(size);
    int wholeDigits = exact.precision() - exact.scale();
    return exact.round(new MathContext(Math.max(digits, wholeDigits), RoundingMode.HALF_EVEN));
  }

  private static String trimmed(BigDecimal number) {
    BigDecimal plain = number.stripTrailingZeros();
    return plain.scale() < 0 ? plain.toBigInteger().toString() : plain.toPlainString();
  }

  private static String powerOfTen(double size, int digits) {
    BigDecimal rounded =
        new BigDecimal(size).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int exponent = rounded.precision() - rounded.scale() - 1;
    String mantissa = trimmed(rounded.movePointLeft(exponent));
    return mantissa + "·10" + superscript(exponent);
  }

  /** A number with so many decimals, whatever the locale. */
  public static String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /**
   * A number that is held against a limit: two decimals, or up to four where fewer would put it on
   * the other side of the limit.
   *
   * @param value to be written
   * @param limit that it reaches or does not
   */
  public static String onItsSide(double value, double limit) {
    for (int decimals = 2; decimals <= 4; decimals++) {
      String text = fixed(value, decimals);
      if (Double.parseDouble(text) >= limit == value >= limit) {
        return text;
      }
    }
    RoundingMode own = value < limit ? RoundingMode.FLOOR : RoundingMode.CEILING;
    return new BigDecimal(value).setScale(4, own).toPlainString();
  }

  /** A whole number in superscript digits. */
  public static String superscript(int number) {
    StringBuilder out = new StringBuilder();
    for (char digit : Integer.toString(number).toCharArray()) {
      out.append(digit == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
    }
    return out.toString();
  }
}
