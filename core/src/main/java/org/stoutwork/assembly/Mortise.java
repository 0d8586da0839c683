package org.stoutwork.assembly;

import org.stoutwork.section.Opening;

/**
 * What a joint takes out of the piece it is cut into.
 *
 * @param joint whose mortise it is
 * @param at distance from the start of the part, mm
 * @param sizeY along local y, mm
 * @param offsetY of its middle from the axis along local y, mm
 * @param sizeZ along local z, mm
 * @param offsetZ of its middle from the axis along local z, mm
 */
public record Mortise(
    String joint, double at, double sizeY, double offsetY, double sizeZ, double offsetZ) {

  /** As seen when the piece bends up and down, in its local x-z plane. */
  public Opening bendingInZ() {
    return new Opening(sizeY, sizeZ, offsetZ);
  }

  /** As seen when the piece bends sideways, in its local x-y plane. */
  public Opening bendingInY() {
    return new Opening(sizeZ, sizeY, offsetY);
  }
}
