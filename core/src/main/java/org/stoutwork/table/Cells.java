package org.stoutwork.table;

import java.util.ArrayList;
import java.util.List;

/** Splits one line at commas; a cell in double quotes may hold commas, and a doubled quote. */
final class Cells {

  private final String line;
  private final List<String> cells = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private boolean quoted;

  private Cells(String line) {
    this.line = line;
  }

  /**
   * The cells of a line, without surrounding blanks.
   *
   * @throws IllegalArgumentException if a quote is left open
   */
  static List<String> of(String line) {
    return new Cells(line).split();
  }

  private List<String> split() {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        i += quote(i);
      } else if (c == ',' && !quoted) {
        endOfCell();
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      throw new IllegalArgumentException("a quoted cell is not closed");
    }
    endOfCell();
    return cells;
  }

  /** Handles a quote at i; returns how many further characters it used up. */
  private int quote(int i) {
    boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
    if (doubled) {
      cell.append('"');
      return 1;
    }
    quoted = !quoted;
    return 0;
  }

  private void endOfCell() {
    cells.add(cell.toString().strip());
    cell.setLength(0);
  }
}
