package org.stoutwork.report.sheet.math;

import java.util.regex.Pattern;

/**
 * Parts long numbers into groups of three by narrow blanks that do not break, as ISO 80000 asks.
 */
public final class Digits {

  private static final Pattern WHOLE = Pattern.compile("(?<![\\d.])\\d{5,}");
  private static final Pattern GROUP = Pattern.compile("(?<=\\d)(?=(\\d{3})+$)");

  private Digits() {}

  /** The text with every whole number of five digits or more parted. */
  public static String grouped(String text) {
    return WHOLE
        .matcher(text)
        .replaceAll(number -> GROUP.matcher(number.group()).replaceAll("\u202f"));
  }
}
