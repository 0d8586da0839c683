package org.stoutwork.analysis.solve;

import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Load;

/** Something besides beams that joins the equations of a frame and may carry loads of its own. */
public interface Attachment {
  /**
   * Adds vertices, elements, conditions, springs and contacts.
   *
   * @param equations the equations of the frame, to be added to
   * @param vertices vertex numbers of the frame's nodes
   */
  void join(Equations equations, Map<String, Integer> vertices);

  /**
   * Adds {@code factor} times a load to the forces on all unknowns, if the load is its own.
   *
   * @return the resultants of what was added, one entry a force, so that the equilibrium check can
   *     count them; empty when the load is not its own
   */
  List<Applied> apply(Load load, double factor, double[] f);

  /**
   * Forces and moments of the ground on the structure through what this attachment holds, for the
   * equilibrium check.
   */
  default List<Applied> reactions(HoldingForces forces) {
    return List.of();
  }
}
