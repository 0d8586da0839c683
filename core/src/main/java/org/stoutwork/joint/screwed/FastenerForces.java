package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/** What fasteners carry together, and what falls to the one that is used most. */
public sealed interface FastenerForces
    permits RowForces, LapForces, ButtForces, LayersForces, HungForces {

  /** Pull of the most used fastener along its shank, N. */
  double pullOfOne(Pad pad, StrengthFamily family);

  /** Shear of the most used fastener, N. */
  double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening);
}
