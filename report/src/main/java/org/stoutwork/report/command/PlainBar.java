package org.stoutwork.report.command;

import org.stoutwork.result.Utilisation;

/**
 * A utilisation as a number and a bar: ten cells up to the limit, which is marked, and half as many
 * again beyond it.
 */
final class PlainBar {

  /** Columns that a bar takes, its number included. */
  static final int WIDTH = 26;

  private static final int CELLS = 10;
  private static final int BEYOND = 5;

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
    return "%6s".formatted(Utilisation.shown(utilisation).replace("over\u00a0", ">"));
  }
}
