package org.stoutwork.analysis.model;

import java.util.List;

/**
 * Loads that act together.
 *
 * @param name for results and messages
 * @param loads in any order; may be empty
 */
public record LoadCase(String name, List<Load> loads) {
  /** Checks the name and copies the list. */
  public LoadCase {
    Check.name("load case", name);
    loads = List.copyOf(loads);
  }

  /** A case of the given loads. */
  public static LoadCase of(String name, Load... loads) {
    return new LoadCase(name, List.of(loads));
  }
}
