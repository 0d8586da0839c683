package org.stoutwork.joint.setting;

/**
 * The bore of a bolt of another joint that runs through the post across this joint, at right angles
 * to the rail.
 *
 * @param diameter mm
 * @param height of its axis above the rail's lower edge, mm
 * @param fromShoulder distance of its axis from the shoulder, mm
 */
public record CrossBore(double diameter, double height, double fromShoulder) {

  /** Checks that there is a bore inside the post. */
  public CrossBore {
    if (!(diameter > 0 && fromShoulder > 0)) {
      throw new IllegalArgumentException(
          "a bore needs a diameter and a place inside the post; they were %s mm, %s mm"
              .formatted(diameter, fromShoulder));
    }
  }
}
