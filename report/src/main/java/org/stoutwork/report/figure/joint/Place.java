package org.stoutwork.report.figure.joint;

import java.util.Locale;
import org.stoutwork.joint.Joint;

/**
 * The pieces that a joint is drawn in.
 *
 * @param members sizes of the piece that ends in the joint ("rail") and of the one it meets
 *     ("post")
 * @param run which way the post runs, seen with the rail lying level
 * @param above length of post beyond the rail's upper edge, mm; the depth of a crossing post above
 *     it
 * @param below length of post beyond the rail's lower edge, mm
 */
public record Place(Joint.Members members, Run run, double above, double below) {

  /** Which way a post runs in the drawing. */
  public enum Run {
    /** Up and down, as a leg does where a rail ends in it. */
    UPRIGHT,
    /** The same turned by a right angle: a leg that ends in a foot or a rail, drawn lying. */
    TURNED,
    /** Towards the reader, as a rail does where a stretcher ends in it. */
    CROSSING
  }

  /**
   * @throws IllegalArgumentException if the post ends before the rail does
   */
  public Place {
    if (!(above >= -1e-6 && below >= -1e-6) && run != Run.CROSSING) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a post is drawn beyond both edges of its rail; %s mm above and %s mm below were given",
              above,
              below));
    }
  }
}
