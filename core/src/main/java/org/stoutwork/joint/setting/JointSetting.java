package org.stoutwork.joint.setting;

import java.util.List;
import org.stoutwork.joint.Joint;

/**
 * What a joint connects.
 *
 * @param members sizes of rail and post
 * @param postFace rings of the post in the rail's direction, that is behind the shoulder
 * @param railDepth rings of the rail along its depth
 * @param rail elastic values of the rail
 * @param post elastic values of the post
 * @param glue used wherever the joint is glued
 * @param postAbove wood of the post above the mortise, mm; unlimited if the post runs on
 * @param postBelow wood of the post below the mortise, mm; unlimited if the post runs on
 * @param angle between the rail's axis and the grain of the post, degrees, 90 if square
 * @param crossed bores of bolts that run through the post across the rail
 */
public record JointSetting(
    Joint.Members members,
    FaceGrain postFace,
    FaceGrain railDepth,
    TimberStiffness rail,
    TimberStiffness post,
    Glue glue,
    double postAbove,
    double postBelow,
    double angle,
    List<CrossBore> crossed) {

  /** A joint that no bolt of another joint crosses. */
  public JointSetting(
      Joint.Members members,
      FaceGrain postFace,
      FaceGrain railDepth,
      TimberStiffness rail,
      TimberStiffness post,
      Glue glue,
      double postAbove,
      double postBelow,
      double angle) {
    this(members, postFace, railDepth, rail, post, glue, postAbove, postBelow, angle, List.of());
  }

  /** Checks distance and angle. */
  public JointSetting {
    crossed = List.copyOf(crossed);
    if (!(postAbove >= 0 && postBelow >= 0)) {
      throw new IllegalArgumentException(
          "wood beyond the mortise cannot be less than 0 mm; it was %s above, %s below"
              .formatted(postAbove, postBelow));
    }
    if (!(angle > 30 && angle <= 90)) {
      throw new IllegalArgumentException(
          "rail and post must meet at more than 30° and at most 90°; the angle was " + angle);
    }
  }

  /** The same with bolts of other joints through the post. */
  public JointSetting crossedBy(List<CrossBore> bores) {
    return new JointSetting(
        members, postFace, railDepth, rail, post, glue, postAbove, postBelow, angle, bores);
  }

  /** A square joint in the length of a post, in PVA, rings unknown. */
  public static JointSetting square(
      Joint.Members members, TimberStiffness rail, TimberStiffness post) {
    return new JointSetting(
        members,
        FaceGrain.MIXED,
        FaceGrain.MIXED,
        rail,
        post,
        Glue.PVA,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        90);
  }
}
