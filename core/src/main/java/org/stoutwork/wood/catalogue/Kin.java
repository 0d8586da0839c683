package org.stoutwork.wood.catalogue;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.WoodGroup;

/**
 * Fills what a table does not print for a species: by the mean of the species of the same genus in
 * that table, or else by the mean of its group. The means are taken once, when the table is read.
 */
final class Kin {

  /** A number and where it comes from. */
  record Value(double value, Source source) {}

  /** A running mean. */
  private record Mean(double sum, int count) {

    Mean and(double value) {
      return new Mean(sum + value, count + 1);
    }
  }

  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final Map<String, Value> means = new HashMap<>();

  Kin(Table table, Map<String, SpeciesNames> names, List<String> columns) {
    Map<String, Mean> sums = new HashMap<>();
    for (Row row : table.rows()) {
      if (rows.put(row.required("key"), row) != null) {
        throw row.fault("this species stands twice");
      }
      SpeciesNames species = names.get(row.required("key"));
      if (species != null) {
        columns.forEach(column -> count(sums, species, column, row.number(column)));
      }
    }
    sums.forEach((kin, mean) -> means.put(kin, value(table, kin, mean)));
  }

  private static void count(
      Map<String, Mean> sums, SpeciesNames species, String column, OptionalDouble number) {
    if (number.isPresent()) {
      for (String kin : List.of(genus(species), group(species.group()))) {
        sums.merge(
            kin + " " + column,
            new Mean(number.getAsDouble(), 1),
            (before, one) -> before.and(one.sum()));
      }
    }
  }

  private static Value value(Table table, String kin, Mean mean) {
    String whose = kin.substring(0, kin.lastIndexOf(' '));
    Source source =
        Source.projectDefault(
            "the species is not in the table: mean of the " + whose + " in " + table.name());
    return new Value(mean.sum() / mean.count(), source);
  }

  private static String genus(SpeciesNames species) {
    return "genus " + species.genus();
  }

  private static String group(WoodGroup group) {
    return "group of " + group.words() + "s";
  }

  /** The row of the species itself. */
  Optional<Row> own(String key) {
    return Optional.ofNullable(rows.get(key));
  }

  /** The mean of a column over the genus, or else over the group, with a source that says so. */
  Value mean(SpeciesNames of, String column) {
    Value ofGenus = means.get(genus(of) + " " + column);
    return ofGenus == null ? groupMean(of.group(), column) : ofGenus;
  }

  /** The mean of a column over hardwoods or softwoods. */
  Value groupMean(WoodGroup group, String column) {
    return means.get(group(group) + " " + column);
  }
}
