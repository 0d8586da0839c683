package org.stoutwork.report.command;

import java.util.ArrayList;
import java.util.List;

/** Breaks sentences into lines that fit a terminal of 80 columns. */
final class TextFlow {

  /** Columns of a line. */
  static final int WIDTH = 80;

  private TextFlow() {}

  /**
   * Breaks a text at its blanks; a word longer than a line gets a line of its own, uncut.
   *
   * @param first what stands before the first line
   * @param indent blanks before each further line
   * @param text the sentences
   * @return the lines, none for an empty text
   */
  static List<String> lines(String first, int indent, String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean begun = false;
    for (String word : text.strip().split("\\s+", -1)) {
      if (begun && width(line) + 1 + word.codePointCount(0, word.length()) > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent));
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
      begun = true;
    }
    if (!text.isBlank()) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static int width(StringBuilder line) {
    return line.codePointCount(0, line.length());
  }
}
