package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.model.PanelSupport;

/**
 * What one support line does to a panel.
 *
 * @param support the line
 * @param force sum along the normal on the panel, N; positive presses the panel up
 * @param parts force by node of the finer mesh
 */
public record PanelReaction(PanelSupport support, double force, List<Part> parts) {
  /** Copies the list. */
  public PanelReaction {
    parts = List.copyOf(parts);
  }

  /**
   * The part of one node.
   *
   * @param at place along the line, mm
   * @param reach length of line that belongs to it, mm
   * @param force N
   * @param open true when the panel has lifted there
   */
  public record Part(double at, double reach, double force, boolean open) {}

  /** Length of the line on which the panel has lifted, mm. */
  public double openLength() {
    return parts.stream().filter(Part::open).mapToDouble(Part::reach).sum();
  }
}
