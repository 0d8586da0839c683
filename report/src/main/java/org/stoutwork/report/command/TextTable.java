package org.stoutwork.report.command;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text: the first columns to the left, the others to the right. */
final class TextTable {

  private final List<List<String>> rows = new ArrayList<>();
  private int left = 1;

  TextTable(String... heading) {
    rows.add(List.of(heading));
  }

  /** Sets how many columns stand to the left; one unless said otherwise. */
  TextTable leftColumns(int count) {
    left = count;
    return this;
  }

  /** Adds a row with as many cells as the heading. */
  TextTable row(List<String> cells) {
    if (cells.size() != rows.get(0).size()) {
      throw new IllegalArgumentException(
          "a row has " + cells.size() + " cells; " + rows.get(0).size() + " are needed");
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  /** Whether there is nothing but the heading. */
  boolean isEmpty() {
    return rows.size() == 1;
  }

  /** The lines, each indented by two blanks. */
  List<String> lines() {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < columns; c++) {
        widths[c] = Math.max(widths[c], width(row.get(c)));
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int... widths) {
    StringBuilder line = new StringBuilder("  ");
    for (int c = 0; c < widths.length; c++) {
      String pad = " ".repeat(widths[c] - width(row.get(c)));
      line.append(c == 0 ? "" : "  ").append(c < left ? row.get(c) + pad : pad + row.get(c));
    }
    return line.toString().stripTrailing();
  }

  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
