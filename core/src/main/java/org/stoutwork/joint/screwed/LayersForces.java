package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/**
 * Screws that hold two layers on each other while both are bent.
 *
 * @param layers and how the screws are spread
 * @param slip modulus of one screw near failure, N/mm
 * @param shear force in both layers together, N
 */
public record LayersForces(LayerSlip layers, double slip, double shear) implements FastenerForces {

  /** None: the layers press on each other. */
  @Override
  public double pullOfOne(Pad pad, StrengthFamily family) {
    return 0;
  }

  /** Force of the slip between the layers; screws build it up one by one and share no end force. */
  @Override
  public double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening) {
    return layers.force(pad, slip, shear);
  }
}
