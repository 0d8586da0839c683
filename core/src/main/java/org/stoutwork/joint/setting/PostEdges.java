package org.stoutwork.joint.setting;

/**
 * How far the edges of a post lie beyond those of the piece that ends at it, where the post itself
 * lies across, such as a rail that a middle stretcher meets. A post that stands has none: its ends
 * are {@link JointSetting#postAbove} and {@link JointSetting#postBelow}.
 *
 * @param below from the lower edge of the piece down to the post's, mm; less than 0 where the piece
 *     reaches beyond it
 * @param above from the upper edge of the piece up to the post's, mm; likewise
 */
public record PostEdges(double below, double above) {

  /** Of a post that stands. */
  public static final PostEdges NONE =
      new PostEdges(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Checks that both are said. */
  public PostEdges {
    if (Double.isNaN(below) || Double.isNaN(above)) {
      throw new IllegalArgumentException(
          "edges of a post need two distances; they were %s and %s mm".formatted(below, above));
    }
  }

  /**
   * The nearer edge, from a place on the piece, mm; less than 0 outside.
   *
   * @param height of the place above the lower edge of the piece, mm
   * @param depth of the piece, mm
   */
  public double from(double height, double depth) {
    return Math.min(below + height, above + depth - height);
  }
}
