package org.stoutwork.analysis.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Load cases, each multiplied by a factor, acting together.
 *
 * @param name for results and messages
 * @param factors factor by load case, in the order in which they are added up
 */
public record Combination(String name, Map<LoadCase, Double> factors) {
  /** Checks the name and copies the map, keeping its order. */
  public Combination {
    Check.name("combination", name);
    factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
    factors.forEach((c, f) -> Check.finite("factor of load case '" + c.name() + "'", f));
  }

  /** A combination without cases yet. */
  public static Combination named(String name) {
    return new Combination(name, Map.of());
  }

  /** One case with factor 1. */
  public static Combination of(LoadCase loadCase) {
    return new Combination(loadCase.name(), Map.of(loadCase, 1.0));
  }

  /** All loads in one case, each multiplied by the factor of its own. */
  public LoadCase asOneCase() {
    List<Load> loads = new ArrayList<>();
    factors.forEach(
        (loadCase, factor) -> loadCase.loads().forEach(load -> loads.add(load.times(factor))));
    return new LoadCase(name, loads);
  }

  /** A copy with one more case (factors of the same case add up). */
  public Combination plus(double factor, LoadCase loadCase) {
    Map<LoadCase, Double> more = new LinkedHashMap<>(factors);
    more.merge(loadCase, factor, Double::sum);
    return new Combination(name, more);
  }
}
