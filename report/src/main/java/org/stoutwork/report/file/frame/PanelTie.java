package org.stoutwork.report.file.frame;

import java.util.Map;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Link;

/**
 * What joins a point of a panel to a node.
 *
 * @param panel the panel's name
 * @param at the point of the panel
 * @param node the node's name
 * @param links per global direction; a direction not named transmits nothing
 */
public record PanelTie(String panel, PanelEntry.Point at, String node, Map<Direction, Link> links) {

  /** Copies the map. */
  public PanelTie {
    links = Map.copyOf(links);
  }
}
