package org.stoutwork.joint.screwed;

/**
 * Where the fasteners of a row sit in one of the two pieces, mm; unlimited where the piece does not
 * end or nothing sits beside them.
 *
 * @param piece as a maker calls it
 * @param end from the nearest end of the piece, along its grain
 * @param edge from its nearest edge, across its grain
 * @param along to the next fastener along the grain
 * @param across to the next fastener across the grain
 * @param degrees angle between the shear and the grain of the piece
 * @param slenderness length of the fastener in the piece over its diameter
 */
public record Seat(
    String piece,
    double end,
    double edge,
    double along,
    double across,
    double degrees,
    double slenderness) {

  /** Checks that the place can be. */
  public Seat {
    if (!(end > 0 && edge > 0 && along > 0 && across > 0 && degrees >= 0 && degrees <= 90)) {
      throw new IllegalArgumentException(
          "distances in the %s must be above 0 mm and the angle 0° to 90°; they were %s, %s, %s, %s mm, %s°"
              .formatted(piece, end, edge, along, across, degrees));
    }
  }
}
