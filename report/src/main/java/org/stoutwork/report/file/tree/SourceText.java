package org.stoutwork.report.file.tree;

import java.util.List;

/**
 * The text of a file together with the name it is called by, and its lines for quoting.
 *
 * @param file the name used in messages
 * @param text the whole text, already decoded
 */
public record SourceText(String file, String text) {

  private static final int WIDEST_EXCERPT = 100;

  /**
   * Quotes a line with a caret below one column.
   *
   * @param spot the spot to point at; its line must exist or lie just behind the end
   * @return two lines of text, or nothing for a spot without line
   */
  public String excerpt(Spot spot) {
    if (spot.line() == 0) {
      return "";
    }
    String line = LineBreaks.line(text, spot.line());
    List<Integer> codePoints = line.codePoints().boxed().toList();
    int caret = Math.min(spot.column() - 1, codePoints.size());
    int from = Math.max(0, Math.min(caret - WIDEST_EXCERPT / 2, codePoints.size()));
    int to = Math.min(codePoints.size(), from + WIDEST_EXCERPT);
    String number = String.valueOf(spot.line());
    String shown = (from > 0 ? "…" : "") + visible(codePoints, from, to);
    int blanks = (from > 0 ? 1 : 0) + (caret - from);
    return "    "
        + number
        + " | "
        + shown.stripTrailing()
        + "\n    "
        + " ".repeat(number.length())
        + " | "
        + " ".repeat(blanks)
        + "^";
  }

  /** Every character as one character wide, so that the caret stays true. */
  private static String visible(List<Integer> codePoints, int from, int to) {
    StringBuilder shown = new StringBuilder();
    for (int c : codePoints.subList(from, to)) {
      if (c == '\t') {
        shown.append('→');
      } else {
        String one = Quote.visible(Character.toString(c));
        shown.append(one.codePointCount(0, one.length()) == 1 ? one : "·");
      }
    }
    return shown.toString();
  }
}
