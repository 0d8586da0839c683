package org.stoutwork.report.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.wood.WoodFact;
import org.stoutwork.report.file.wood.WoodFacts;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.moisture.ClearMeans;

/** Everything that is known of woods, one beside the other, within 80 columns. */
final class WoodTable {

  private static final int WIDTH = 80;
  private static final int SIDE_BY_SIDE = 3;
  private static final int DIGITS = 3;

  private final OptionalDouble moisture;
  private final List<String> lines = new ArrayList<>();

  private WoodTable(OptionalDouble moisture) {
    this.moisture = moisture;
  }

  static List<String> lines(List<Wood> woods, OptionalDouble moisture) {
    WoodTable table = new WoodTable(moisture);
    for (int from = 0; from < woods.size(); from += SIDE_BY_SIDE) {
      table.block(woods.subList(from, Math.min(woods.size(), from + SIDE_BY_SIDE)), from);
    }
    table.notes(woods);
    return table.lines;
  }

  private static String letter(int index) {
    return Character.toString('A' + index % 26);
  }

  private void block(List<Wood> woods, int from) {
    for (int i = 0; i < woods.size(); i++) {
      title(letter(from + i), woods.get(i));
    }
    lines.add("");
    List<String> heading = new ArrayList<>(List.of("property", "state", "unit"));
    List<Map<Row, WoodFact>> columns = new ArrayList<>();
    for (int i = 0; i < woods.size(); i++) {
      heading.add(letter(from + i));
      columns.add(column(woods.get(i)));
    }
    TextTable table = new TextTable(heading.toArray(new String[0])).leftColumns(3);
    Set<Row> rows = new LinkedHashSet<>();
    columns.forEach(column -> rows.addAll(column.keySet()));
    for (Row row : rows) {
      List<String> cells = new ArrayList<>(List.of(row.label(), row.state(), row.unit()));
      columns.forEach(column -> cells.add(value(column.get(row))));
      table.row(cells);
    }
    lines.addAll(table.lines());
    lines.add("");
    for (int i = 0; i < woods.size(); i++) {
      sources(letter(from + i), columns.get(i).values());
    }
    lines.add("");
  }

  /**
   * What stands at the left of the table.
   *
   * @param key of the property
   * @param label in few words
   * @param state in which it holds
   * @param unit of its values
   */
  private record Row(String key, String label, String state, String unit) {

    static Row of(WoodFact fact) {
      String label = fact.meaning().replaceFirst("(, at | \\().*", "");
      return new Row(fact.key(), label, fact.state(), fact.property().unit().symbol());
    }
  }

  private Map<Row, WoodFact> column(Wood wood) {
    Map<Row, WoodFact> column = new LinkedHashMap<>();
    WoodFacts.of(wood, moisture).forEach(fact -> column.put(Row.of(fact), fact));
    return column;
  }

  private static String value(WoodFact fact) {
    return fact == null
        ? ""
        : Writing.number(fact.property().value(), DIGITS).replace('\u00a0', ' ');
  }

  private void title(String letter, Wood wood) {
    wrapped(letter + "  ", "%s: %s (%s)".formatted(wood.key(), wood.name(), wood.kind()));
    List<String> others = wood.names().stream().skip(1).toList();
    if (!others.isEmpty()) {
      wrapped("   ", "also " + String.join("; ", others));
    }
  }

  /** Sources with what each of them gives. */
  private void sources(String letter, Collection<WoodFact> facts) {
    Map<String, Set<String>> bySource = new LinkedHashMap<>();
    for (WoodFact fact : facts) {
      Row row = Row.of(fact);
      String what = row.state().isEmpty() ? row.label() : row.label() + " " + row.state();
      bySource
          .computeIfAbsent(fact.property().source().line(), key -> new LinkedHashSet<>())
          .add(what);
    }
    lines.add("Sources of " + letter);
    bySource.forEach(
        (source, what) -> {
          wrapped("  ", source + ":");
          wrapped("    ", bySource.size() == 1 ? "all" : String.join("; ", what));
        });
  }

  private void notes(List<Wood> woods) {
    if (woods.stream().anyMatch(Species.class::isInstance)) {
      lines.add("dry: air-dry, near 12 % moisture content. Means of small clear specimens");
      lines.add("say nothing about knots and are not design values.");
    }
    if (moisture.isPresent() && moisture.getAsDouble() < ClearMeans.DRIEST) {
      lines.add("Below 8 % no further gain in strength is counted: means are those at 8 %.");
    }
    boolean unmoved = woods.stream().anyMatch(wood -> !(wood instanceof Species));
    if (moisture.isPresent() && unmoved) {
      lines.add("Values of strength classes and sheets are not given by moisture content.");
    }
  }

  private void wrapped(String indent, String text) {
    lines.addAll(wrap(indent, text));
  }

  /** Breaks a text between words; lines after the first begin further in. */
  static List<String> wrap(String indent, String text) {
    List<String> wrapped = new ArrayList<>();
    StringBuilder line = new StringBuilder(indent);
    boolean fresh = true;
    for (String word : text.split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        wrapped.add(line.toString());
        line = new StringBuilder(" ".repeat(indent.length() + 2));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    wrapped.add(line.toString());
    return wrapped;
  }
}
