package org.stoutwork.analysis.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Joins one place of a panel to a node of the frame, in global directions.
 *
 * <p>The links act at the place on the panel; a rigid arm leads there from the node. A one-way link
 * lets the panel move in the positive direction away from the node.
 *
 * @param at place on the panel
 * @param node name of the frame's node
 * @param links per global direction; a direction not named transmits nothing
 */
public record PanelTie(PanelPoint at, String node, Map<Direction, Link> links) {
  /** Checks the node's name and that something is joined. */
  public PanelTie {
    Check.name("node of a panel's tie", node);
    if (links.isEmpty()) {
      throw new IllegalArgumentException(
          "the tie of a panel to node '" + node + "' joins nothing; name at least one direction");
    }
    links = Collections.unmodifiableMap(new EnumMap<>(links));
  }
}
