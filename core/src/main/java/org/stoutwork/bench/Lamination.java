package org.stoutwork.bench;

/**
 * How a piece is built up of several, glued on their faces.
 *
 * @param count of the pieces, 2 or more
 * @param stacked whether they are stacked along the bench or across it
 */
public record Lamination(int count, Grain stacked) {

  /** Most pieces that a leg is built of. */
  public static final int MOST = 8;

  /** Checks that there is a line of glue. */
  public Lamination {
    if (count < 2 || count > MOST) {
      throw new IllegalArgumentException(
          "a built-up piece has 2 to %s parts; it was given %s".formatted(MOST, count));
    }
  }
}
