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
 * @param proud how far the rail's upper edge stands above the end of the post, mm
 * @param rod whether a like rail meets the post from its other face, so that bolts on their common
 *     axis are rods from nut to nut
 * @param edges of a post that lies across
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
    List<CrossBore> crossed,
    double proud,
    boolean rod,
    PostEdges edges) {

  /** A joint that no bolt of another joint crosses, its rail not proud of the post. */
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
    this(
        members,
        postFace,
        railDepth,
        rail,
        post,
        glue,
        postAbove,
        postBelow,
        angle,
        List.of(),
        0,
        false,
        PostEdges.NONE);
  }

  /** Checks distance and angle. */
  public JointSetting {
    crossed = List.copyOf(crossed);
    if (!(proud >= 0)) {
      throw new IllegalArgumentException(
          "a rail stands 0 mm or more above the post's end; it was %s mm".formatted(proud));
    }
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

  /** The same with the rail's upper edge so much above the end of the post. */
  public JointSetting leftProud(double mm) {
    return with(crossed, mm, rod, edges);
  }

  /** Whether the mortise is open at the post's upper end: no wood is left above it. */
  public boolean openAbove() {
    return postAbove <= 0;
  }

  /** The same with bolts of other joints through the post. */
  public JointSetting crossedBy(List<CrossBore> bores) {
    return with(bores, proud, rod, edges);
  }

  /** The same with a like rail on the other face of the post. */
  public JointSetting withRod(boolean likeRailOpposite) {
    return with(crossed, proud, likeRailOpposite, edges);
  }

  /** The same with a post that lies across. */
  public JointSetting onPostWith(PostEdges ofPost) {
    return with(crossed, proud, rod, ofPost);
  }

  private JointSetting with(
      List<CrossBore> bores, double railProud, boolean likeRailOpposite, PostEdges ofPost) {
    return new JointSetting(
        members,
        postFace,
        railDepth,
        rail,
        post,
        glue,
        postAbove,
        postBelow,
        angle,
        bores,
        railProud,
        likeRailOpposite,
        ofPost);
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
