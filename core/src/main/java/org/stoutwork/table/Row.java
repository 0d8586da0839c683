package org.stoutwork.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;

/** One row of a table: cells by the name of their column, and the line on which it stands. */
public final class Row {

  private final String table;
  private final Map<String, Integer> columns;
  private final List<String> cells;
  private final int line;

  Row(String table, Map<String, Integer> columns, List<String> cells, int line) {
    this.table = table;
    this.columns = columns;
    this.cells = List.copyOf(cells);
    this.line = line;
  }

  /** The line of the table's text, counted from 1. */
  public int line() {
    return line;
  }

  /**
   * The text of a cell; empty if nothing is printed there.
   *
   * @throws TableFault if the table has no such column
   */
  public String text(String column) {
    Integer index = columns.get(column);
    if (index == null) {
      throw fault(
          "there is no column \"%s\"; the columns are %s".formatted(column, columns.keySet()));
    }
    return cells.get(index);
  }

  /**
   * The text of a cell that must not be empty.
   *
   * @throws TableFault if it is empty
   */
  public String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      throw fault("column \"%s\" is empty".formatted(column));
    }
    return text;
  }

  /**
   * The number in a cell, if one is printed.
   *
   * @throws TableFault if the cell holds something else
   */
  public OptionalDouble number(String column) {
    String text = text(column);
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(asNumber(column, text));
  }

  /**
   * The number in a cell that must not be empty.
   *
   * @throws TableFault if it is empty or no number
   */
  public double requiredNumber(String column) {
    return asNumber(column, required(column));
  }

  private double asNumber(String column, String text) {
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException notANumber) {
      // Told below, with its place.
    }
    throw fault("column \"%s\" holds \"%s\", which is no number".formatted(column, text));
  }

  /** The parts of a cell that lists several things, separated by semicolons. */
  public List<String> list(String column) {
    String text = text(column);
    return text.isEmpty()
        ? List.of()
        : List.of(text.split(";", -1)).stream().map(String::strip).toList();
  }

  /**
   * The citation of the row: its columns {@code source} and {@code mark}.
   *
   * @throws TableFault if one is missing or the mark is unknown
   */
  public Source source() {
    return source("mark");
  }

  /**
   * The citation of those columns of the row whose mark stands in the given column.
   *
   * @throws TableFault if one is missing or the mark is unknown
   */
  public Source source(String markColumn) {
    String words = required(markColumn);
    Mark mark =
        Table.markNamed(words)
            .orElseThrow(() -> fault("\"%s\" is no mark of a value".formatted(words)));
    return new Source(required("source"), "", mark);
  }

  /** The mark in a column, if one is given. */
  public Optional<Mark> mark(String markColumn) {
    return text(markColumn).isEmpty() ? Optional.empty() : Optional.of(source(markColumn).mark());
  }

  /** A fault that names this row. */
  public TableFault fault(String what) {
    return new TableFault(table, line, what);
  }
}
