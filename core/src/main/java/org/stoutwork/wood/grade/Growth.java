package org.stoutwork.wood.grade;

import java.util.OptionalDouble;

/**
 * What is known of a piece before it is cut.
 *
 * @param defects how clean it is
 * @param grainRun length along the piece in which the grain moves by 1, such as 12 for a slope of
 *     1:12; empty for straight grain. At least 6: steeper pieces are not used for a bench
 */
public record Growth(GrowthDefects defects, OptionalDouble grainRun) {

  /** The steepest slope of grain that is allowed, as its run. */
  public static final double STEEPEST_RUN = 6;

  /** Clear and straight grained. */
  public static final Growth CLEAR = new Growth(GrowthDefects.CLEAR, OptionalDouble.empty());

  /**
   * @throws IllegalArgumentException if the grain is steeper than 1:6
   */
  public Growth {
    if (grainRun.isPresent() && !(grainRun.getAsDouble() >= STEEPEST_RUN)) {
      throw new IllegalArgumentException(
          "the grain may slope 1:6 at the most; it was 1:%s. Choose a straighter piece"
              .formatted(grainRun.getAsDouble()));
    }
  }

  /** A piece with straight grain. */
  public static Growth straight(GrowthDefects defects) {
    return new Growth(defects, OptionalDouble.empty());
  }
}
