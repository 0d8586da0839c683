package org.stoutwork.report.file.tree;

import java.util.List;
import java.util.Optional;

/**
 * A node that holds values under keys, in file order. Keys are unique.
 *
 * @param spot where it begins
 * @param path where it stands
 * @param entries the entries in file order
 */
public record MapNode(Spot spot, KeyPath path, List<Entry> entries) implements Node {

  /** Copies the list. */
  public MapNode {
    entries = List.copyOf(entries);
  }

  /**
   * One key with its value.
   *
   * @param key the key's text
   * @param spot where the key stands
   * @param value what it holds
   */
  public record Entry(String key, Spot spot, Node value) {}

  /**
   * Finds an entry.
   *
   * @param key the exact key
   * @return the entry, or empty when the map has no such key
   */
  public Optional<Entry> entry(String key) {
    return entries.stream().filter(e -> e.key().equals(key)).findFirst();
  }

  @Override
  public String given() {
    return "is a map of keys";
  }
}
