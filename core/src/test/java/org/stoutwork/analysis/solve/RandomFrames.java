package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/** Skewed four-legged frames with joints of all kinds: nothing square, nothing equal. */
final class RandomFrames {
  private static final String[] CORNERS = {"A", "B", "C", "D"};
  private static final double[][] PLAN = {{0, 0}, {1500, 0}, {1500, 600}, {0, 600}};

  private RandomFrames() {}

  /** A frame of 12 nodes and 16 members on elastic feet. */
  static FrameModel frame(Random r) {
    return frame(r, false);
  }

  /** The same on feet that push only, when asked. */
  static FrameModel frame(Random r, boolean oneWayFeet) {
    FrameModelBuilder b = FrameModel.builder();
    b.material("wood", between(r, 9000, 13000), between(r, 500, 900), between(r, 400, 700));
    for (String s : List.of("leg", "rail", "top")) {
      b.section(s, section(r));
    }
    for (int c = 0; c < 4; c++) {
      for (int level = 0; level < 3; level++) {
        double z = level * 400.0;
        b.node(
            CORNERS[c] + level,
            PLAN[c][0] + between(r, -60, 60),
            PLAN[c][1] + between(r, -60, 60),
            z + between(r, -30, 30));
      }
    }
    for (int c = 0; c < 4; c++) {
      String next = CORNERS[(c + 1) % 4];
      String own = CORNERS[c];
      member(b, r, "low" + own, own + 0, own + 1, "leg", true);
      member(b, r, "high" + own, own + 1, own + 2, "leg", true);
      member(b, r, "rail" + own, own + 1, next + 1, "rail", false);
      member(b, r, "top" + own, own + 2, next + 2, "top", false);
      foot(b, r, own + 0, oneWayFeet);
    }
    return b.build();
  }

  private static void foot(FrameModelBuilder b, Random r, String node, boolean oneWay) {
    b.support(node, Direction.UX, Restraint.elastic(between(r, 100, 5000)));
    b.support(node, Direction.UY, r.nextBoolean() ? Restraint.FIXED : Restraint.elastic(900));
    if (oneWay) {
      b.support(
          node,
          Direction.UZ,
          r.nextBoolean() ? Restraint.COMPRESSION_ONLY : Restraint.compressionOnly(2500));
    } else {
      b.support(node, Direction.UZ, r.nextBoolean() ? Restraint.FIXED : Restraint.elastic(3000));
    }
  }

  private static CrossSection section(Random r) {
    double w = between(r, 35, 100);
    double h = between(r, 60, 140);
    double shear = w * h * 5 / 6;
    double j = 0.3 * w * w * w * h * h * h / (w * w + h * h);
    return new CrossSection(
        w * h, w * h * h * h / 12, h * w * w * w / 12, j, shear, r.nextInt(4) == 0 ? 0 : shear);
  }

  private static void member(
      FrameModelBuilder b, Random r, String name, String from, String to, String s, boolean stiff) {
    MemberEnd start = MemberEnd.RIGID;
    MemberEnd end = MemberEnd.RIGID;
    if (!stiff) {
      start = joint(r);
      end = joint(r);
      if (r.nextInt(3) == 0) {
        start = start.free(Direction.RY);
      }
    }
    b.member(name, from, to, s, "wood", between(r, -1, 1), start, end);
  }

  private static MemberEnd joint(Random r) {
    MemberEnd end = MemberEnd.RIGID.offset(between(r, -20, 20), between(r, -20, 20), 5);
    for (Direction d : Direction.values()) {
      if (r.nextInt(3) == 0) {
        double stiff = d.isRotation() ? 1e7 : 1e4;
        end = end.spring(d, stiff * Math.pow(10, between(r, -1, 2)));
      }
    }
    return end;
  }

  /** Loads of every kind. */
  static LoadCase loads(Random r, FrameModel model, String name) {
    List<Load> loads = new ArrayList<>();
    for (String node : List.of("A2", "C1", "D2")) {
      loads.add(new Load.OnNode(node, vector(r, 500), vector(r, 50000)));
    }
    for (String member : List.of("topA", "railB", "highC")) {
      Load.Axes axes = r.nextBoolean() ? Load.Axes.LOCAL : Load.Axes.GLOBAL;
      double l = length(model, member);
      loads.add(
          new Load.OnMemberPoint(
              member, l * r.nextDouble(), vector(r, 400), vector(r, 30000), axes));
      double a = l * r.nextDouble();
      double b = a + (l - a) * r.nextDouble();
      loads.add(new Load.OnMemberLine(member, a, b, vector(r, 2), vector(r, 2), axes));
    }
    loads.add(new Load.SelfWeight(vector(r, 1)));
    return new LoadCase(name, loads);
  }

  static double length(FrameModel model, String member) {
    var m = model.members().get(member);
    return model
        .nodes()
        .get(m.to())
        .plus(m.end().offset())
        .minus(model.nodes().get(m.from()).plus(m.start().offset()))
        .length();
  }

  static Vec3 vector(Random r, double size) {
    return new Vec3(size * r.nextGaussian(), size * r.nextGaussian(), size * r.nextGaussian());
  }

  static double between(Random r, double low, double high) {
    return low + (high - low) * r.nextDouble();
  }
}
