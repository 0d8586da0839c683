package org.stoutwork.fastener;

/**
 * The hole in the piece under a screw's head: round, or a slot with round ends.
 *
 * @param width across the slot, or the diameter of a round hole, mm
 * @param length of the slot over its round ends, mm; equal to the width of a round hole
 */
public record ScrewHole(double width, double length) {

  /** Checks that the hole can be drilled. */
  public ScrewHole {
    if (!(width > 0 && length >= width && Double.isFinite(length))) {
      throw new IllegalArgumentException(
          "a slot is wider than 0 mm and at least as long as wide; it was %s by %s mm"
              .formatted(width, length));
    }
  }

  /** A round hole. */
  public static ScrewHole round(double diameter) {
    return new ScrewHole(diameter, diameter);
  }

  /** Whether it is as long as wide. */
  public boolean isRound() {
    return length == width;
  }
}
