package org.stoutwork.assembly;

import java.util.List;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.PostEdges;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.stiffness.SpringSet;
import org.stoutwork.working.Pad;

/** Places one kind of joint: its springs, its mortises, and its entry in the list of joints. */
final class Joiner {

  /** Part of their mean stiffness that rotations keep at the low level; project default. */
  private static final double HELD_AT_LEAST = 0.2;

  private final FrameAssembly frames;
  private final BenchJoint joint;
  private final JointSetting setting;
  private final JointStiffness stiffness;
  private final TenonHole hole;
  private final List<TenonHole> holes;

  Joiner(
      FrameAssembly frames,
      BenchJoint joint,
      Joint.Members members,
      String railWood,
      String postWood,
      Reach post) {
    this(frames, joint, members, railWood, postWood, post, List.of());
  }

  Joiner(
      FrameAssembly frames,
      BenchJoint joint,
      Joint.Members members,
      String railWood,
      String postWood,
      Reach post,
      List<CrossBore> crossed) {
    this(frames, joint, members, railWood, postWood, post, crossed, false, PostEdges.NONE);
  }

  /**
   * @param bothWays whether a like piece meets the post from its other face
   * @param edges of a post that lies across
   */
  Joiner(
      FrameAssembly frames,
      BenchJoint joint,
      Joint.Members members,
      String railWood,
      String postWood,
      Reach post,
      List<CrossBore> crossed,
      boolean bothWays,
      PostEdges edges) {
    this.frames = frames;
    this.joint = joint;
    this.holes = TenonHole.all(joint.joint(), members);
    this.hole = holes.get(0);
    this.setting =
        setting(members, railWood, postWood, post)
            .crossedBy(crossed)
            .leftProud(Math.max(0, -post.above()))
            .withRod(bothWays)
            .onPostWith(edges);
    this.stiffness = closing(stiffness(joint, setting, Pad.blank()));
  }

  /**
   * How far the post runs on from the edges of the rail.
   *
   * @param below from the rail's lower edge to the post's end, mm
   * @param above from the rail's upper edge to the post's end, mm
   */
  record Reach(double below, double above) {

    /** The post runs on both ways. */
    static final Reach BOTH_WAYS = new Reach(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Of a leg from its bottom to its top, for a rail with its middle at a height. */
    static Reach of(Bench bench, EndFrame frame, double centre, double depth) {
      return new Reach(
          centre - depth / 2 - Layout.legBottom(frame),
          Layout.legTop(bench, frame) - centre - depth / 2);
    }
  }

  private JointSetting setting(
      Joint.Members members, String railWood, String postWood, Reach post) {
    JointSetting usual = JointSetting.square(members, directions(railWood), directions(postWood));
    double above = post.above() + members.railDepth() - hole.below() - hole.height();
    return new JointSetting(
        members,
        usual.postFace(),
        usual.railDepth(),
        usual.rail(),
        usual.post(),
        frames.bench.glue().glue(),
        Math.max(0, above),
        Math.max(0, post.below() + hole.below()),
        usual.angle());
  }

  /** The stiffness of a joint: the one stated, or the one that follows from its sizes. */
  static JointStiffness stiffness(BenchJoint joint, JointSetting setting, Pad pad) {
    Joint counted = joint.stated().isPresent() ? joint.stated().get() : joint.joint();
    return JointStiffness.of(counted, setting, pad);
  }

  private TimberStiffness directions(String wood) {
    return frames
        .timbers
        .apply(wood)
        .directions()
        .orElseThrow(
            () ->
                new IllegalArgumentException("\"" + wood + "\" cannot be jointed: it is a sheet"));
  }

  /**
   * The stiffness with which the frame is analysed. A tenon cannot spin or swing freely in its
   * mortise, so the two secondary rotations never fall below a small part of their mean.
   */
  private static JointStiffness closing(JointStiffness stated) {
    SpringSet low = stated.low();
    SpringSet mean = stated.mean();
    SpringSet kept =
        new SpringSet(
            low.axial(),
            low.shear(),
            low.shearAcross(),
            low.rotInPlane(),
            Math.max(low.rotVertical(), HELD_AT_LEAST * mean.rotVertical()),
            Math.max(low.torsion(), HELD_AT_LEAST * mean.torsion()));
    return new JointStiffness(kept, mean, stated.high(), stated.reason(), stated.freeRotation());
  }

  private SpringSet springs() {
    return frames.springs.apply(stiffness);
  }

  MemberEnd level(Vec3 arm) {
    return Springs.level(springs(), arm);
  }

  /** The end of a leg: it stands on its shoulders, so that pegs need not carry its push. */
  MemberEnd upright(Vec3 arm) {
    return Springs.upright(springs(), arm).with(Direction.UX, EndCondition.RIGID);
  }

  void spot(PartKind kind, String rail, String post, String member, boolean atStart) {
    frames.joints.add(
        new JointSpot(
            rail + " into " + post, rail, kind, post, joint, setting, stiffness, member, atStart));
  }

  /** From the middle of the rail to the lower end of a hole, along an upright post. */
  private double alongPost(TenonHole cut) {
    return cut.below() - setting.members().railDepth() / 2;
  }

  /** Distance from the axis to the middle of a hole that begins at the face. */
  private double toFace(TenonHole cut) {
    return (setting.members().postDepth() - cut.depth()) / 2;
  }

  /** Cuts a leg for a rail across the bench; the rail comes from the side of {@code sign}·Y. */
  void mortiseAcross(String leg, double at, int sign) {
    for (TenonHole cut : cuts()) {
      double from = at + alongPost(cut);
      double y = sign * toFace(cut);
      cut(leg, at, cut.depth(), y, cut.width(), cut.offset(), from, cut.height());
    }
  }

  /** Cuts a leg for a stretcher along the bench, which comes from the side of {@code sign}·X. */
  void mortiseAlong(String leg, double at, int sign) {
    for (TenonHole cut : cuts()) {
      double from = at + alongPost(cut);
      double z = -sign * toFace(cut);
      cut(leg, at, cut.width(), cut.offset(), cut.depth(), z, from, cut.height());
    }
  }

  /** Cuts a rail or foot for a leg, which comes from the side of {@code sign}·Z. */
  void mortiseUpright(String rail, double at, int sign) {
    for (TenonHole cut : cuts()) {
      double middle = cut.equals(hole) ? 0 : alongPost(cut) + cut.height() / 2;
      double from = at + middle - cut.height() / 2;
      double z = sign * toFace(cut);
      cut(rail, at, cut.width(), cut.offset(), cut.depth(), z, from, cut.height());
    }
  }

  /**
   * Cuts a rail for a stretcher along the bench, which comes from the side of {@code sign}·X.
   *
   * @param lift of the stretcher's middle above the rail's, mm
   */
  void mortiseThroughRail(String rail, double at, int sign, double lift) {
    for (TenonHole cut : cuts()) {
      double up = lift + alongPost(cut) + cut.height() / 2;
      double from = at - cut.width() / 2;
      double y = -sign * toFace(cut);
      cut(rail, at, cut.depth(), y, cut.height(), up, from, cut.width());
    }
  }

  /** Bores the end of a leg for bolts in its foot or in the rail over it. */
  void boreUpright(String leg, double at) {
    if (joint.joint() instanceof BoltedTenon bolted) {
      BoltedTenon.Nut nut = bolted.nut();
      for (double height : bolted.boltHeights(setting.members())) {
        double y = height - setting.members().railDepth() / 2;
        double before = nut.fromEnd() - nut.diameter() / 2;
        double thickness = setting.members().railThickness();
        cut(leg, at, bolted.bore(), y, bolted.bore(), 0, at, before);
        cut(leg, at, nut.diameter(), y, thickness, 0, at + before, nut.diameter());
      }
    }
  }

  /**
   * Bores the piece that ends here for its bolts, from its shoulder to the nut, and cuts it through
   * for the nuts. Both are looked at under the forces at the shoulder.
   *
   * @param at the end of the piece: 0, or its length, mm
   */
  void boreEnd(String rail, double at) {
    if (!(joint.joint() instanceof BoltedTenon bolted)) {
      return;
    }
    BoltedTenon.Nut nut = bolted.nut();
    double middle = setting.members().railDepth() / 2;
    for (double height : bolted.boltHeights(setting.members())) {
      double up = height - middle;
      double before = nut.fromEnd() - nut.diameter() / 2;
      double thickness = setting.members().railThickness();
      cut(rail, at, bolted.bore(), 0, bolted.bore(), up, at, before);
      cut(rail, at, thickness, 0, nut.diameter(), up, at + before, nut.diameter());
    }
  }

  private List<TenonHole> cuts() {
    return hole.depth() > 0 ? holes : List.of();
  }

  private void cut(
      String part,
      double at,
      double sizeY,
      double offsetY,
      double sizeZ,
      double offsetZ,
      double from,
      double size) {
    frames.mortises.cut(
        part, new Mortise(part, at, sizeY, offsetY, sizeZ, offsetZ, from, from + size));
  }
}
