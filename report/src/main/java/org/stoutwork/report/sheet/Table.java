package org.stoutwork.report.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.RichText;

/**
 * A table. Its head is repeated on every page it reaches.
 *
 * @param caption over the table, numbered; empty for none
 * @param anchor name by which text refers to it as {@code {table:name}} and {@code {page:name}};
 *     empty for none
 * @param columns one or more
 * @param rows each with one cell for every column, or with one cell that spans all
 * @param dense whether it is set in 9 points; only where 10 will not do
 */
public record Table(
    RichText caption, String anchor, List<Column> columns, List<Row> rows, boolean dense)
    implements Block {

  /**
   * @throws IllegalArgumentException if a row's cells do not match the columns
   */
  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("a table needs at least one column; none was given");
    }
    for (Row row : rows) {
      if (row.cells().size() != (row.spanning() ? 1 : columns.size())) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "a row of %d cells does not fit a table of %d columns: %s",
                row.cells().size(),
                columns.size(),
                row));
      }
    }
  }

  /** Begins a table with the given columns. */
  public static Builder of(Column... columns) {
    return new Builder(List.of(columns));
  }

  /**
   * A row.
   *
   * @param cells in the order of the columns
   * @param spanning whether its only cell spans all columns, as the name of a group of rows
   */
  public record Row(List<Cell> cells, boolean spanning) {

    /** Keeps its own copy. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** Collects the rows of a table. For one thread. */
  public static final class Builder {

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();
    private RichText caption = RichText.EMPTY;
    private String anchor = "";
    private boolean dense;

    private Builder(List<Column> columns) {
      this.columns = columns;
    }

    /** Sets the caption. */
    public Builder caption(String markup) {
      caption = RichText.of(markup);
      return this;
    }

    /** Sets the name by which text refers to the table. */
    public Builder anchor(String name) {
      anchor = name;
      return this;
    }

    /** Sets the table in 9 points. */
    public Builder dense() {
      dense = true;
      return this;
    }

    /** Adds a row of marked-up texts. */
    public Builder row(String... markups) {
      return row(Arrays.stream(markups).map(Cell::of).toList());
    }

    /** Adds a row. */
    public Builder row(List<Cell> cells) {
      rows.add(new Row(cells, false));
      return this;
    }

    /** Adds the name of a group of rows, across all columns. */
    public Builder group(String markup) {
      rows.add(new Row(List.of(Cell.of(markup)), true));
      return this;
    }

    /** The table. */
    public Table build() {
      return new Table(caption, anchor, columns, rows, dense);
    }
  }
}
