package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects the mortises cut into each part while joints are placed. */
final class Mortises {

  private final Map<String, List<Mortise>> byPart = new LinkedHashMap<>();

  void cut(String part, Mortise mortise) {
    byPart.computeIfAbsent(part, p -> new ArrayList<>()).add(mortise);
  }

  /**
   * The part with what joints cut out of it, besides the holes that it has already: of these the
   * ones that would run into a joint are left out, for a maker sets them clear of it.
   */
  Part into(Part part) {
    List<Mortise> all = new ArrayList<>(byPart.getOrDefault(part.name(), List.of()));
    List<Mortise> clear =
        part.mortises().stream().filter(hole -> all.stream().noneMatch(hole::meets)).toList();
    all.addAll(clear);
    return new Part(part.name(), part.kind(), part.wood(), part.pieces(), all, part.length());
  }
}
