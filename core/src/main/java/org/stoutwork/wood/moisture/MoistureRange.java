package org.stoutwork.wood.moisture;

/**
 * Two moisture contents between which a wood will live, such as winter and summer.
 *
 * @param low %, at least 0
 * @param high %, at least {@code low}, at most 30
 */
public record MoistureRange(double low, double high) {

  /** Moisture content above which wood no longer swells, as the handbook's linear law takes it. */
  public static final double SATURATION = 30;

  /**
   * @throws IllegalArgumentException if the range is empty or outside 0 to 30 %
   */
  public MoistureRange {
    if (!(low >= 0 && high >= low && high <= SATURATION)) {
      throw new IllegalArgumentException(
          "a moisture range runs upward within 0 to 30 %%; it was %s to %s".formatted(low, high));
    }
  }

  /** The middle of the range, %. */
  public double middle() {
    return (low + high) / 2;
  }

  /** The width of the range, in points of moisture content. */
  public double spread() {
    return high - low;
  }
}
