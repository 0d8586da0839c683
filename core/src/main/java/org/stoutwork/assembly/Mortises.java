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

  Part into(Part part) {
    return new Part(
        part.name(),
        part.kind(),
        part.wood(),
        part.pieces(),
        byPart.getOrDefault(part.name(), List.of()),
        part.length());
  }
}
