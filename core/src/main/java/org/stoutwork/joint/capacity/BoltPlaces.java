package org.stoutwork.joint.capacity;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * Where bed bolts may lie. They are pulled along their axes, and the stub tenon carries the shear,
 * so that no distance of bolts under a force across them is asked: the washer must lie wholly on
 * the post, the nut pulls along the grain of the rail like a dowel, and the bore leaves wood beside
 * itself. EN 1995-1-1 says nothing of nuts in wood; the three diameters and the end distance that
 * its Table 8.5 asks of dowels are not asked here, for the plug before the nut is calculated.
 */
record BoltPlaces(BoltedTenon joint, Case with) {

  /**
   * Edge distance in diameters of a fastener that is loaded along the grain, not in slender ones.
   */
  private static final double ALONG_THE_GRAIN = 1.5;

  private static final Source NUT =
      Documents.nds("Table 12.5.1C, along the grain, l/D up to 6; the nut as a dowel");

  private static final Source BORE =
      Source.projectDefault("as a fastener of the bolt's size that is loaded along the grain");

  void all() {
    if (!with.setting().rod()) {
      washers();
    }
    Joint.Members m = with.members();
    with.limits()
        .rule(
            "nut from the edge of the rail",
            "rail",
            (m.railDepth() - joint.spacing()) / 2,
            ALONG_THE_GRAIN * joint.nut().diameter(),
            Unit.MM,
            NUT);
    with.limits()
        .rule(
            "bolt from the face of the rail",
            "rail",
            m.railThickness() / 2,
            ALONG_THE_GRAIN * joint.bolt().diameter(),
            Unit.MM,
            BORE);
    walls();
  }

  private void washers() {
    double outer = joint.bolt().washer().outer();
    with.limits()
        .rule(
            "washer from the edges of the post",
            "washer",
            Math.min(with.members().postThickness() / 2, Math.min(toEnd(), toEdge())),
            outer / 2,
            Unit.MM,
            Source.derived("geometry: all of the washer that is counted lies on wood"));
    if (joint.bolts() == 2) {
      with.limits()
          .rule(
              "washers of two bolts side by side",
              "washer",
              joint.spacing(),
              outer,
              Unit.MM,
              Source.derived("geometry: neither lies on the other"));
    }
  }

  /** From the nearer bolt to an end of the post, mm. */
  private double toEnd() {
    double proud = with.setting().proud();
    double end =
        proud > 0
            ? with.members().railDepth() - proud
            : with.setting().postAbove() + joint.shoulderBelow() + joint.height();
    double nearest = Double.POSITIVE_INFINITY;
    for (double bolt : joint.boltHeights(with.members())) {
      double below = with.setting().postBelow() - joint.shoulderBelow() + bolt;
      nearest = Math.min(nearest, Math.min(end - bolt, below));
    }
    return Math.max(0, nearest);
  }

  /** From the nearer bolt to an edge of a post that lies across, mm. */
  private double toEdge() {
    double depth = with.members().railDepth();
    double nearest =
        joint.boltHeights(with.members()).stream()
            .mapToDouble(bolt -> with.setting().edges().from(bolt, depth))
            .min()
            .orElseThrow();
    return Math.max(0, nearest);
  }

  /** A drill wanders, and a thin web splits off as the tenon swells on its bolt. */
  private void walls() {
    List<Double> levers = joint.boreLevers(with.members());
    if (levers.isEmpty()) {
      return;
    }
    with.limits()
        .rule(
            "wood beside the bore of a bolt",
            "tenon",
            (joint.thickness() - joint.bore()) / 2,
            BoltedTenon.WALL_SHARE * joint.thickness(),
            Unit.MM,
            Source.projectDefault("a fifth of the tenon's thickness on either side of a bore"));
    double farthest = levers.stream().mapToDouble(Math::abs).max().orElseThrow();
    with.limits()
        .rule(
            "wood above or below the bore of a bolt",
            "tenon",
            joint.height() / 2 - farthest - joint.bore() / 2,
            joint.bore() / 2,
            Unit.MM,
            Source.projectDefault("half of the bore up to the tenon's edge"));
  }
}
