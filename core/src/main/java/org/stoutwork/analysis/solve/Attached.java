package org.stoutwork.analysis.solve;

import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.model.Load;

/** An {@link Attachment} within one system of equations. */
public interface Attached {
  /**
   * Adds {@code factor} times a load to the forces on all unknowns, if the load is its own.
   *
   * @return the resultants of what was added, one entry a force, so that the equilibrium check can
   *     count them; empty when the load is not its own
   */
  List<Applied> apply(Load load, double factor, double[] f);

  /**
   * Forces and moments of the ground on the structure through what the attachment itself holds, for
   * the equilibrium check.
   */
  default List<Applied> reactions(HoldingForces forces) {
    return List.of();
  }

  /** A figure of its own as a sum of the unknowns; empty when it belongs to something else. */
  default Optional<LinearForm> form(Response.OnPanel response) {
    return Optional.empty();
  }
}
