package org.stoutwork.wood.catalogue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.WoodGroup;

/**
 * Fills what a table does not print for a species: by the mean of the species of the same genus in
 * that table, or else by the mean of its group.
 */
final class Kin {

  /** A number and whether it is the species' own. */
  record Value(double value, Source source) {}

  private final String tableName;
  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final Map<String, SpeciesNames> names;

  Kin(Table table, Map<String, SpeciesNames> names) {
    this.tableName = table.name();
    this.names = names;
    for (Row row : table.rows()) {
      if (rows.put(row.required("key"), row) != null) {
        throw row.fault("this species stands twice");
      }
    }
  }

  /** The row of the species itself. */
  Optional<Row> own(String key) {
    return Optional.ofNullable(rows.get(key));
  }

  /** The mean of a column over the genus, or else over the group, with a source that says so. */
  Value mean(SpeciesNames of, String column) {
    OptionalDouble genus = meanOf(column, other -> other.genus().equals(of.genus()));
    if (genus.isPresent()) {
      return new Value(genus.getAsDouble(), like("genus " + of.genus()));
    }
    return groupMean(of.group(), column);
  }

  /** The mean of a column over hardwoods or softwoods. */
  Value groupMean(WoodGroup group, String column) {
    double mean = meanOf(column, other -> other.group() == group).orElseThrow();
    return new Value(mean, like("group of " + group.words() + "s"));
  }

  private Source like(String kin) {
    return Source.projectDefault(
        "the species is not in the table: mean of the " + kin + " in " + tableName);
  }

  private OptionalDouble meanOf(String column, Predicate<SpeciesNames> kin) {
    return rows.entrySet().stream()
        .filter(one -> isKin(one.getKey(), kin))
        .map(one -> one.getValue().number(column))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .average();
  }

  private boolean isKin(String key, Predicate<SpeciesNames> kin) {
    SpeciesNames other = names.get(key);
    return other != null && kin.test(other);
  }
}
