package org.stoutwork.report.command;

import java.util.Locale;
import org.stoutwork.quantity.Writing;

/**
 * A utilisation as a number and a bar: ten cells up to the limit, which is marked, and half as many
 * again beyond it.
 */
final class PlainBar {

  /** Columns that a bar takes, its number included. */
  static final int WIDTH = 25;

  private static final int CELLS = 10;
  private static final int BEYOND = 5;
  private static final double LONGEST_NUMBER = 1000;

  private PlainBar() {}

  static String of(double utilisation) {
    int full = (int) Math.min(CELLS + BEYOND + 1.0, Math.rint(utilisation * CELLS));
    // What is beyond the limit must show so, however little it is.
    int within = Math.min(CELLS, full);
    int over = utilisation > 1 ? Math.max(1, full - CELLS) : 0;
    StringBuilder bar = new StringBuilder(number(utilisation)).append(' ');
    bar.append("#".repeat(within)).append(".".repeat(CELLS - within)).append('|');
    bar.append("#".repeat(Math.min(over, BEYOND))).append(over > BEYOND ? ">" : "");
    return bar.append(" ".repeat(WIDTH - bar.length())).toString();
  }

  private static String number(double utilisation) {
    if (!(utilisation < LONGEST_NUMBER)) {
      return " >999";
    }
    return utilisation >= CELLS
        ? "%5s".formatted(Writing.number(utilisation, 3))
        : String.format(Locale.ROOT, "%5.2f", utilisation);
  }
}
