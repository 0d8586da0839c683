package org.stoutwork.report.figure.joint;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.report.drawing.Point;

/** Joints drawn up or held by bolts, dowels or a loose wedge. */
final class FastenedShape {

  /** Head of a bolt over its diameter: thickness and width, as hexagon heads have them. */
  private static final double HEAD_THICKNESS = 0.65;

  private static final double HEAD_WIDTH = 1.7;

  private FastenedShape() {}

  /** Length of rail that a joint needs to show, mm: as far as what holds it reaches. */
  static double reach(Joint joint, Joint.Members members) {
    if (joint instanceof BoltedTenon bolted) {
      return bolted.nut().fromEnd() + bolted.nut().diameter() / 2;
    }
    if (joint instanceof DowelledButt dowelled) {
      return dowelled.inRail();
    }
    Optional<ScrewSet> screws =
        joint instanceof ScrewedButt butt
            ? Optional.of(butt.screws())
            : joint instanceof Housing housing ? housing.screws() : Optional.empty();
    return screws.map(s -> Math.max(0, s.screw().length() - members.postDepth())).orElse(0.0);
  }

  static void draw(Views v, ScrewedButt j) {
    v.postCut().rail().faces();
    double b = v.members().railThickness() / 2;
    v.shoulder.cutOtherwise(-b, 0, b, v.depth());
    screws(v, j.screws());
    v.postDepth(1).sizes(1);
  }

  /** Edges of a rail and the heights of its screws, for a chain of dimensions. */
  static double[] heights(ScrewSet set, double depth) {
    return DoubleStream.concat(
            DoubleStream.concat(
                DoubleStream.of(0), set.heights(depth).stream().mapToDouble(Double::doubleValue)),
            DoubleStream.of(depth))
        .toArray();
  }

  /** Screws from the back of the post into the end of the rail. */
  static void screws(Views v, ScrewSet set) {
    double d = set.screw().diameter();
    double tip = set.screw().length() - v.post();
    for (int i = 0; i < set.count(); i++) {
      double z = set.heights(v.depth()).get(i);
      v.section.seen(-v.post(), z - d / 2, tip, z + d / 2);
      v.section.axis(-v.post() - 4, z, tip + 4, z);
      v.shoulder.round(0, z, d);
    }
    double b = v.members().railThickness() / 2;
    double lowest = set.heights(v.depth()).get(0);
    v.shoulder.right(b, 0, heights(set, v.depth()));
    v.shoulder.below(-b, 0, 0, lowest, 0).below(0, lowest, b, 0, 0);
    v.section.below(0, 0, tip, lowest, 0);
  }

  static void draw(Views v, BoltedTenon j) {
    double low = j.shoulderBelow();
    double high = low + j.height();
    v.postCut()
        .rail(
            new Point(0, high),
            new Point(-j.length(), high),
            new Point(-j.length(), low),
            new Point(0, low))
        .faces()
        .tenons(low, j.height(), j.thickness(), 1, 0);
    double[] heights = new double[j.bolts() + 2];
    heights[heights.length - 1] = v.depth();
    for (int i = 0; i < j.bolts(); i++) {
      double z = v.depth() / 2 + (i - (j.bolts() - 1) / 2.0) * j.spacing();
      heights[i + 1] = z;
      bolt(v, j, z);
    }
    double back = -v.post() - j.bolt().washer().thickness();
    v.section.left(back - HEAD_THICKNESS * j.bolt().diameter(), 0, heights);
    v.section.below(-j.length(), low, 0, low, 0);
    v.section.below(0, 0, j.nut().fromEnd(), heights[1], 0);
    v.shoulder.right(v.members().railThickness() / 2, 0, 0, low, high, v.depth());
    v.postDepth(1).sizes(1);
  }

  private static void bolt(Views v, BoltedTenon j, double z) {
    double d = j.bolt().diameter();
    double washer = j.bolt().washer().thickness();
    double out = j.bolt().washer().outer() / 2;
    double back = -v.post();
    v.section
        .seen(back, z - d / 2, j.nut().fromEnd(), z + d / 2)
        .seen(back - washer, z - out, back, z + out)
        .seen(
            back - washer - HEAD_THICKNESS * d,
            z - HEAD_WIDTH * d / 2,
            back - washer,
            z + HEAD_WIDTH * d / 2);
    nut(v.section, j.nut(), z, d);
    v.section.axis(
        back - washer - HEAD_THICKNESS * d - 4, z, j.nut().fromEnd() + j.nut().diameter(), z);
    v.shoulder.round(0, z, d);
  }

  private static void nut(JointView view, BoltedTenon.Nut nut, double z, double bolt) {
    if (nut.round()) {
      view.round(nut.fromEnd(), z, nut.diameter());
    } else {
      double half = 0.4 * bolt;
      double out = nut.diameter() / 2;
      view.seen(nut.fromEnd() - half, z - out, nut.fromEnd() + half, z + out);
    }
  }

  static void draw(Views v, LooseWedgeTenon j) {
    double low = j.shoulderBelow();
    double high = low + j.height();
    double outer = v.post() + j.wedgeThickness();
    double length = outer + j.relish();
    v.postCut()
        .rail(
            new Point(0, high),
            new Point(-length, high),
            new Point(-length, low),
            new Point(0, low))
        .faces()
        .tenons(low, j.height(), j.thickness(), 1, 0);
    double middle = (low + high) / 2;
    double wedge = 0.85 * j.height();
    double slope = Math.tan(Math.toRadians(j.angle())) * wedge;
    v.section.solid(
        List.of(
            new Point(-v.post(), middle + wedge),
            new Point(-outer - slope, middle + wedge),
            new Point(-outer + slope, middle - wedge),
            new Point(-v.post(), middle - wedge)));
    double w = j.wedgeWidth() / 2;
    v.shoulder.hidden(-w, middle - wedge, w, middle + wedge);
    v.shoulder.below(-w, middle - wedge, w, middle - wedge, 1);
    v.section
        .below(-length, low, -outer, middle, 0)
        .below(-outer, middle, -v.post(), low, 0)
        .below(-v.post(), low, 0, low, 0)
        .below(-length, low, 0, low, 1);
    v.shoulder.right(v.members().railThickness() / 2, 0, 0, low, high, v.depth());
    v.sizes(2);
  }

  static void draw(Views v, DowelledButt j) {
    v.postCut().rail().faces();
    double b = v.members().railThickness() / 2;
    v.shoulder.cutOtherwise(-b, 0, b, v.depth());
    double d = j.dowel().diameter();
    double[] heights = new double[j.count() + 2];
    heights[heights.length - 1] = v.depth();
    for (int i = 0; i < j.count(); i++) {
      double z = j.edge() + i * j.spacing();
      heights[i + 1] = z;
      v.section.seen(-j.inPost(), z - d / 2, j.inRail(), z + d / 2);
      v.section.axis(-j.inPost() - 4, z, j.inRail() + 4, z);
      v.shoulder.round(0, z, d);
    }
    v.shoulder.right(b, 0, heights);
    v.section
        .below(-j.inPost(), j.edge(), 0, j.edge(), 0)
        .below(0, j.edge(), j.inRail(), j.edge(), 0);
    v.postDepth(1).sizes(0);
  }
}
