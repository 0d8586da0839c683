package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives long texts short names, in the order in which they are first asked for, so that a table
 * holds the name and a list the text. For one thread.
 *
 * @param <T> what is named
 */
final class Register<T> {

  private final String prefix;
  private final Map<T, String> names = new LinkedHashMap<>();

  Register(String prefix) {
    this.prefix = prefix;
  }

  /** The name of something, a new one if it has none. */
  String name(T thing) {
    String name = names.get(thing);
    if (name == null) {
      name = prefix + (names.size() + 1);
      names.put(thing, name);
    }
    return name;
  }

  /** Everything that has a name, in order. */
  List<Map.Entry<T, String>> entries() {
    return new ArrayList<>(names.entrySet());
  }
}
