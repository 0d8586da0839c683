package org.stoutwork.analysis.solve;

import java.util.Map;
import org.stoutwork.analysis.model.Vec3;

/** A panel of one mesh that can join the equations of a frame. */
final class PanelAttachment implements Attachment {
  private final PanelGrid grid;
  private final Map<String, Vec3> nodes;

  /**
   * Makes the attachment.
   *
   * @param nodes places of the frame's nodes
   */
  PanelAttachment(PanelGrid grid, Map<String, Vec3> nodes) {
    this.grid = grid;
    this.nodes = nodes;
  }

  @Override
  public PanelAttached join(Equations equations, Map<String, Integer> vertices) {
    return new PanelAttached(grid, nodes, equations, vertices);
  }
}
