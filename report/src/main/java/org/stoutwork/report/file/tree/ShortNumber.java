package org.stoutwork.report.file.tree;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;

/**
 * Writes a number with the fewest digits that read back as the same double. {@code Double.toString}
 * does so only from JDK 19 on; files must not depend on that.
 */
public final class ShortNumber {

  private static final double LARGEST_PLAIN = 1e15;
  private static final double SMALLEST_PLAIN = 1e-5;

  private ShortNumber() {}

  /**
   * Writes a number.
   *
   * @param value a finite number
   * @return for instance {@code 0}, {@code 11000}, {@code 0.25}, {@code 1.5e-7}; no negative zero
   */
  public static String of(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal shortest = new BigDecimal(NumberOutput.toString(value, true)).stripTrailingZeros();
    double size = Math.abs(value);
    if (size >= SMALLEST_PLAIN && size < LARGEST_PLAIN) {
      return shortest.toPlainString();
    }
    String digits = shortest.unscaledValue().abs().toString();
    int exponent = digits.length() - 1 - shortest.scale();
    String mantissa = digits.length() == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
    return (value < 0 ? "-" : "") + mantissa + "e" + exponent;
  }
}
