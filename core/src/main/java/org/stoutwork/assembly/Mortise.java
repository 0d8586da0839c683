package org.stoutwork.assembly;

import org.stoutwork.section.PiercedSection;

/**
 * What a joint takes out of the piece it is cut into.
 *
 * @param joint whose mortise it is
 * @param at distance from the start of the part, mm
 * @param sizeY along local y, mm
 * @param offsetY of its middle from the axis along local y, mm
 * @param sizeZ along local z, mm
 * @param offsetZ of its middle from the axis along local z, mm
 * @param from where it begins, from the start of the part, mm
 * @param to where it ends, from the start of the part, mm
 */
public record Mortise(
    String joint,
    double at,
    double sizeY,
    double offsetY,
    double sizeZ,
    double offsetZ,
    double from,
    double to) {

  /** Whether another mortise of the same part takes wood from a section that this one cuts too. */
  public boolean meets(Mortise other) {
    return from < other.to && other.from < to;
  }

  /** As a hole of the section whose side b lies along local y and whose side h along local z. */
  public PiercedSection.Hole hole() {
    return PiercedSection.Hole.about(offsetY, offsetZ, sizeY, sizeZ);
  }
}
