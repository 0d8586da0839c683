package org.stoutwork.joint;

/**
 * Where the middle of a tenon may lie in the depth of its rail. The shoulder presses over a third
 * of the depth from an edge of the rail, and turns the joint about the tenon with the lever from
 * there to the tenon's middle. A tenon whose middle is no farther from that edge than the
 * pressure's has a lever of next to nothing, or of less.
 */
final class TenonMiddle {

  /**
   * Part of the rail's depth kept from either edge, over the ninth without lever; project default.
   */
  private static final double SHARE = 1.0 / 8;

  /** A shoulder narrower than this bears nothing, mm; project default. */
  private static final double LEAST = 0.5;

  private TenonMiddle() {}

  /**
   * Refuses a tenon that leaves no shoulder to press on one edge of its rail: none beyond it, and
   * none beside it.
   *
   * @param width of the tenon, or of all tenons with what is between them, mm
   */
  static void requireShoulder(
      double width, double height, double shoulderBelow, Joint.Members members) {
    double above = members.railDepth() - shoulderBelow - height;
    if (Math.min(shoulderBelow, above) < LEAST) {
      JointFault.requireAtMost(
          "tenon thickness",
          width,
          members.railThickness() - 2 * LEAST,
          "the thickness of the rail less its shoulders, for the tenon reaches an edge of the rail");
    }
  }

  /** Refuses a tenon whose middle is too near to the lower or the upper edge of its rail. */
  static void require(double height, double shoulderBelow, Joint.Members members) {
    double depth = members.railDepth();
    double middle = shoulderBelow + height / 2;
    JointFault.requireAtLeast(
        "middle of the tenon over the rail's lower edge",
        middle,
        SHARE * depth,
        "an eighth of the rail's depth, or the shoulder below has no lever to press with: make"
            + " tenonHeight or shoulderBelow larger");
    JointFault.requireAtMost(
        "middle of the tenon over the rail's lower edge",
        middle,
        depth - SHARE * depth,
        "seven eighths of the rail's depth, or the shoulder above has no lever to press with: make"
            + " shoulderBelow smaller");
  }
}
