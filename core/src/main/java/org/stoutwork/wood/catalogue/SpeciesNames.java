package org.stoutwork.wood.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.WoodGroup;

/** The names of a species, as one row of their table. */
record SpeciesNames(
    String key, String commonName, String botanicalName, WoodGroup group, List<String> others) {

  static Map<String, SpeciesNames> from(Table table) {
    Map<String, SpeciesNames> names = new LinkedHashMap<>();
    for (Row row : table.rows()) {
      SpeciesNames one =
          new SpeciesNames(
              row.required("key"),
              row.required("common_name"),
              row.text("botanical_name"),
              WoodGroup.named(row.required("group")),
              row.list("other_names"));
      if (names.put(one.key, one) != null) {
        throw row.fault("species \"%s\" stands twice".formatted(one.key));
      }
    }
    return names;
  }

  /** The first word of the botanical name. */
  String genus() {
    return botanicalName.isEmpty() ? key : botanicalName.split(" ", 2)[0];
  }
}
