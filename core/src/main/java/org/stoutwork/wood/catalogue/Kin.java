package org.stoutwork.wood.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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

  private final Table table;
  private final Map<String, SpeciesNames> names;

  Kin(Table table, Map<String, SpeciesNames> names) {
    this.table = table;
    this.names = names;
  }

  /** The row of the species itself. */
  Optional<Row> own(String key) {
    return table.rows().stream().filter(row -> row.required("key").equals(key)).findFirst();
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
        "the species is not in the table: mean of the %s in %s".formatted(kin, table.name()));
  }

  private OptionalDouble meanOf(String column, Predicate<SpeciesNames> kin) {
    List<Double> values =
        table.rows().stream()
            .filter(row -> isKin(row, kin))
            .map(row -> row.number(column))
            .filter(OptionalDouble::isPresent)
            .map(OptionalDouble::getAsDouble)
            .collect(Collectors.toList());
    return values.stream().mapToDouble(Double::doubleValue).average();
  }

  private boolean isKin(Row row, Predicate<SpeciesNames> kin) {
    SpeciesNames other = names.get(row.required("key"));
    return other != null && kin.test(other);
  }
}
