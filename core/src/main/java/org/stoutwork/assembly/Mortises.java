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

  /** The part with what joints cut out of it, besides what it has already. */
  Part into(Part part) {
    List<Mortise> all = new ArrayList<>(part.mortises());
    all.addAll(byPart.getOrDefault(part.name(), List.of()));
    return new Part(part.name(), part.kind(), part.wood(), part.pieces(), all, part.length());
  }
}
