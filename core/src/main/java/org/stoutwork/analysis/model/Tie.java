package org.stoutwork.analysis.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Springs, rigid links or one-way contacts of zero length between two nodes, each in a global
 * direction.
 *
 * <p>They act at {@code place}; rigid arms lead there from both nodes, so that a tie between nodes
 * that are apart is still in equilibrium. A contact presses while {@code upper} moves against the
 * positive direction relative to {@code lower}, and opens the other way.
 *
 * @param name unique among ties
 * @param lower name of the first node
 * @param upper name of the second node
 * @param place where the springs act, mm
 * @param links per global direction; a direction not named transmits nothing
 */
public record Tie(String name, String lower, String upper, Vec3 place, Map<Direction, Link> links) {
  /** Checks the name and that something is joined. */
  public Tie {
    Check.name("tie", name);
    if (links.isEmpty()) {
      throw new IllegalArgumentException(
          "tie '" + name + "' joins nothing; name at least one direction");
    }
    links = Collections.unmodifiableMap(new EnumMap<>(links));
  }
}
