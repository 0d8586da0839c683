package org.stoutwork.report.file.tree;

import java.util.Locale;

/** Quotes foreign text so that it can stand in a one-line message. */
public final class Quote {

  private static final int LONGEST = 60;

  private Quote() {}

  /**
   * Quotes a text, makes control characters visible and cuts what is very long.
   *
   * @param text any text
   * @return the text in double quotes, on one line
   */
  public static String of(String text) {
    int length = text.codePointCount(0, text.length());
    if (length <= LONGEST) {
      return '"' + visible(text) + '"';
    }
    String start = text.substring(0, text.offsetByCodePoints(0, LONGEST));
    return '"' + visible(start) + "…\" (" + length + " characters)";
  }

  /**
   * Makes control characters and broken characters visible.
   *
   * @param text any text
   * @return the text with each such character as an escape
   */
  static String visible(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> append(shown, c));
    return shown.toString();
  }

  private static void append(StringBuilder shown, int c) {
    switch (c) {
      case '\n' -> shown.append("\\n");
      case '\r' -> shown.append("\\r");
      case '\t' -> shown.append("\\t");
      default -> {
        if (isPrintable(c)) {
          shown.appendCodePoint(c);
        } else {
          shown.append(String.format(Locale.ROOT, "\\u%04x", c));
        }
      }
    }
  }

  private static boolean isPrintable(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }
}
