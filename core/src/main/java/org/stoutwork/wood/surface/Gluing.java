package org.stoutwork.wood.surface;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Wood;

/** Which woods bond with difficulty: oily and dense ones. Immutable. */
public final class Gluing {

  private final Map<String, Source> difficult;

  private Gluing(Map<String, Source> difficult) {
    this.difficult = difficult;
  }

  /**
   * Reads the table.
   *
   * @throws org.stoutwork.table.TableFault if it is damaged
   */
  public static Gluing load() {
    Map<String, Source> difficult = new LinkedHashMap<>();
    for (Row row : Table.beside(Wood.class, "gluing.csv").rows()) {
      if (difficult.put(row.required("key"), row.source()) != null) {
        throw row.fault("this wood stands twice");
      }
    }
    return new Gluing(Map.copyOf(difficult));
  }

  /** Who says that a wood bonds with difficulty; empty where nothing of the kind is known. */
  public Optional<Source> difficult(Wood wood) {
    return Optional.ofNullable(difficult.get(wood.key()));
  }

  /** The keys of all woods that are listed. */
  public Set<String> keys() {
    return difficult.keySet();
  }
}
