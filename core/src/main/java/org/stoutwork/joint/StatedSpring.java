package org.stoutwork.joint;

import java.util.OptionalDouble;

/**
 * A joint known only by the stiffness its owner states; marked as theirs.
 *
 * @param low rotational stiffness in the plane of the frame, N·mm/rad
 * @param mean N·mm/rad
 * @param high N·mm/rad
 * @param momentCapacity design capacity, N·mm, if stated
 */
public record StatedSpring(double low, double mean, double high, OptionalDouble momentCapacity)
    implements Joint {

  /** Checks the order of the three levels. */
  public StatedSpring {
    if (!(low >= 0 && mean >= low && high >= mean)) {
      throw new IllegalArgumentException(
          "stated stiffness needs 0 ≤ low ≤ mean ≤ high; it was %s, %s, %s N·mm/rad"
              .formatted(low, mean, high));
    }
    if (momentCapacity.isPresent() && !(momentCapacity.getAsDouble() > 0)) {
      throw new IllegalArgumentException(
          "a stated moment capacity must be above 0 N·mm; it was " + momentCapacity.getAsDouble());
    }
  }

  @Override
  public String title() {
    return "joint of stated stiffness";
  }

  @Override
  public void requireFits(Members members) {
    // Nothing is known of its geometry.
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.statedSpring(this);
  }
}
