package org.stoutwork.result;

import org.stoutwork.action.Way;

/**
 * How the bench racks one way.
 *
 * @param way along or across
 * @param force of the thrust, N
 * @param stiffness thrust over sway at the top, N/mm; 0 where the frame does not stand by itself
 * @param sway under the thrust, mm, second order included; a thousand times what is allowed stands
 *     for a frame that folds
 * @param amplification of the sway by the weight that leans with it; a thousand at most
 */
public record Racking(
    Way way,
    double force,
    StiffnessRange stiffness,
    StiffnessRange sway,
    StiffnessRange amplification) {

  /** Whether the frame folds under its own weight with the joints at their softest. */
  public boolean foldsAtSoftest() {
    return Utilisation.unlimited(amplification.low());
  }
}
