package org.stoutwork.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.source.Mark;

/**
 * A table of facts: what its header says, the names of its columns, and its rows.
 *
 * <p>The text begins with comment lines ({@code # title: ...}), then one line of column names, then
 * the rows. Empty lines are not allowed, nor are rows with more or fewer cells than columns.
 *
 * @param name of the table, as it is called in messages
 * @param header the comment lines, without their mark
 * @param columns names of the columns
 * @param rows in the order of the text
 */
public record Table(String name, List<String> header, List<String> columns, List<Row> rows) {

  /** Keeps its own copies. */
  public Table {
    header = List.copyOf(header);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Reads the table that is kept beside a class.
   *
   * @param beside the class in whose package the text stands
   * @param name of the file
   * @throws TableFault if the text is not a table
   * @throws IllegalStateException if there is no such text
   */
  public static Table beside(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the table %s is missing beside %s".formatted(name, beside.getName()));
      }
      return read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("the table %s cannot be read".formatted(name), e);
    }
  }

  /**
   * Reads a table from its text.
   *
   * @throws TableFault if the text is not a table
   */
  public static Table read(String name, String text) {
    List<String> header = new ArrayList<>();
    Map<String, Integer> columns = Map.of();
    List<Row> rows = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("#")) {
        header.add(line.substring(1).strip());
      } else if (columns.isEmpty()) {
        columns = columnsOf(name, i + 1, line);
      } else {
        rows.add(rowOf(name, columns, i + 1, line));
      }
    }
    requireTitle(name, header);
    return new Table(name, header, List.copyOf(columns.keySet()), rows);
  }

  private static void requireTitle(String name, List<String> header) {
    for (String wanted : List.of("title:", "units:", "source")) {
      if (header.stream().noneMatch(line -> line.startsWith(wanted))) {
        throw new TableFault(name, 1, "the header says no \"%s\"".formatted(wanted));
      }
    }
  }

  private static Map<String, Integer> columnsOf(String name, int line, String text) {
    List<String> names = cells(name, line, text);
    Map<String, Integer> columns = new LinkedHashMap<>();
    names.forEach(one -> columns.put(one, columns.size()));
    if (columns.size() < names.size() || columns.containsKey("")) {
      throw new TableFault(name, line, "column names must be given and differ: " + names);
    }
    return columns;
  }

  private static Row rowOf(String name, Map<String, Integer> columns, int line, String text) {
    List<String> cells = cells(name, line, text);
    if (cells.size() != columns.size()) {
      throw new TableFault(
          name, line, "%s cells for %s columns".formatted(cells.size(), columns.size()));
    }
    return new Row(name, columns, cells, line);
  }

  private static List<String> cells(String name, int line, String text) {
    try {
      return Cells.of(text);
    } catch (IllegalArgumentException e) {
      throw new TableFault(name, line, e.getMessage());
    }
  }

  /** How many rows bear each mark in the given column; rows without a mark are not counted. */
  public Map<Mark, Integer> census(String markColumn) {
    Map<Mark, Integer> counts = new EnumMap<>(Mark.class);
    rows.forEach(row -> row.mark(markColumn).ifPresent(m -> counts.merge(m, 1, Integer::sum)));
    return counts;
  }

  static Optional<Mark> markNamed(String words) {
    return Arrays.stream(Mark.values()).filter(mark -> mark.words().equals(words)).findFirst();
  }
}
