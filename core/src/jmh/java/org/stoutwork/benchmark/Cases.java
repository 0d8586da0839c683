package org.stoutwork.benchmark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.element.PlateShell;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.Applied;
import org.stoutwork.analysis.solve.Attached;
import org.stoutwork.analysis.solve.Equations;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.linear.SparseSymmetric;

/**
 * Skewed bench bases and tops made from parameters: splayed legs, turned plan, eccentric joints.
 */
final class Cases {
  private static final String[] CORNER = {"A", "B", "C", "D"};
  private static final double[][] PLAN = {{0, 0}, {1700, 0}, {1700, 620}, {0, 620}};
  private static final double TURN = 0.31;

  private Cases() {}

  /** A base of 12 nodes and 16 members, rigid joints, feet on springs: 72 unknowns. */
  static FrameModel a12() {
    return base(false, 1, MemberEnd.RIGID);
  }

  /** The base with rails on six springs at both ends: 20 nodes, 120 unknowns. */
  static FrameModel a20() {
    return base(true, 1, MemberEnd.RIGID);
  }

  /** A20, each member in {@code k} pieces. */
  static FrameModel pieces(int k) {
    return base(true, k, MemberEnd.RIGID);
  }

  private static FrameModel base(boolean jointed, int pieces, MemberEnd end) {
    Random r = new Random(20);
    FrameModelBuilder b = FrameModel.builder().material("wood", 11700, 730, 540);
    b.section("leg", new CrossSection(8100, 5.9e6, 5.1e6, 8.3e6, 6750, 6750));
    b.section("rail", new CrossSection(4400, 4.7e6, 5.9e5, 1.7e6, 3666, 3666));
    for (int c = 0; c < 4; c++) {
      for (int level = 0; level < 3; level++) {
        double splay = 1 - 0.06 * level;
        double x = 850 + splay * (PLAN[c][0] - 850) + 20 * r.nextGaussian();
        double y = 310 + splay * (PLAN[c][1] - 310) + 12 * r.nextGaussian();
        double z = 410.0 * level + 9 * r.nextGaussian();
        b.node(CORNER[c] + level, turned(x, y, z));
      }
      feet(b, CORNER[c] + 0);
    }
    for (int c = 0; c < 4; c++) {
      String own = CORNER[c];
      String next = CORNER[(c + 1) % 4];
      chain(b, r, "low" + own, own + 0, own + 1, "leg", pieces, end);
      chain(b, r, "high" + own, own + 1, own + 2, "leg", pieces, end);
      chain(b, r, "top" + own, own + 2, next + 2, "rail", pieces, end);
      if (jointed) {
        joint(b, r, "s" + own, own + 1);
        joint(b, r, "e" + own, next + 1);
        chain(b, r, "rail" + own, "s" + own, "e" + own, "rail", pieces, end);
      } else {
        chain(b, r, "rail" + own, own + 1, next + 1, "rail", pieces, end);
      }
    }
    return b.build();
  }

  private static Vec3 turned(double x, double y, double z) {
    double c = Math.cos(TURN);
    double s = Math.sin(TURN);
    return new Vec3(c * x - s * y, s * x + c * y, z + 0.011 * x - 0.007 * y);
  }

  private static void feet(FrameModelBuilder b, String node) {
    for (Direction d : Direction.values()) {
      b.support(node, d, Restraint.elastic(d.isRotation() ? 3.1e6 : 4200));
    }
  }

  /** A node beside {@code at}, joined to it by six springs off the axis. */
  private static void joint(FrameModelBuilder b, Random r, String name, String at) {
    Vec3 place = b.build().nodes().get(at);
    Vec3 beside = place.plus(new Vec3(17 + 3 * r.nextDouble(), 11 - 5 * r.nextDouble(), 7));
    b.node(name, beside);
    Map<Direction, Link> links = new EnumMap<>(Direction.class);
    for (Direction d : Direction.values()) {
      links.put(d, Link.elastic((d.isRotation() ? 2.4e7 : 1.3e4) * (0.8 + 0.4 * r.nextDouble())));
    }
    b.tie("joint " + name, at, name, links);
  }

  private static void chain(
      FrameModelBuilder b,
      Random r,
      String name,
      String from,
      String to,
      String section,
      int pieces,
      MemberEnd end) {
    double roll = 0.2 * r.nextGaussian();
    MemberEnd start = end.offset(5 * r.nextGaussian(), 4 * r.nextGaussian(), 6);
    Vec3 a = b.build().nodes().get(from);
    Vec3 span = b.build().nodes().get(to).minus(a);
    String last = from;
    for (int k = 0; k < pieces; k++) {
      String next = k == pieces - 1 ? to : name + "@" + k;
      if (k < pieces - 1) {
        b.node(next, a.plus(span.times((k + 1.0) / pieces)));
      }
      MemberEnd begin = k == 0 ? start : MemberEnd.RIGID;
      b.member(name + "." + k, last, next, section, "wood", roll, begin, MemberEnd.RIGID);
      last = next;
    }
  }

  static PreparedFrame prepared(FrameModel model) {
    return FrameSolver.prepare(model).prepared();
  }

  /** A20 with a top of nx by ny elements, six unknowns a node, tilted with the frame. */
  static PreparedFrame withTop(int nx, int ny) {
    FrameModel model = a20();
    return FrameSolver.prepare(
            model,
            List.of(
                (equations, vertices) -> {
                  join(model, equations, vertices, nx, ny);
                  return new Unloaded();
                }))
        .prepared();
  }

  private record Unloaded() implements Attached {
    @Override
    public List<Applied> apply(Load load, double factor, double[] f) {
      return List.of();
    }
  }

  private static void join(
      FrameModel model, Equations equations, Map<String, Integer> vertices, int nx, int ny) {
    Vec3 o = turned(-60, -50, 1270);
    Vec3 along = turned(1760, -50, 1270).minus(o);
    Vec3 side = turned(-60, 670, 1270).minus(o);
    Vec3 normal = along.cross(side);
    Vec3 across = normal.cross(along);
    PanelPlace place =
        new PanelPlace(o, along.times(1 / along.length()), across.times(1 / across.length()));
    PanelSection section =
        PanelSection.solid(new PanelMaterial(11000, 900, 700, 600, 120, 0.3, 620), 61);
    double a = 1820.0 / nx;
    double b = 720.0 / ny;
    int first = equations.unknowns() / 6;
    for (int i = 0; i <= nx; i++) {
      for (int j = 0; j <= ny; j++) {
        equations.vertex("top " + i + "," + j);
      }
    }
    PlateShell.Cell cell = new PlateShell.Cell(a, b, section, place);
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        int n = first + i * (ny + 1) + j;
        equations.add(new PlateShell("top", new int[] {n, n + ny + 1, n + ny + 2, n + 1}, cell));
      }
    }
    for (int n = first; 6 * n < equations.unknowns(); n++) {
      // A flat membrane hardly resists drilling; a whisper of a spring keeps the matrix regular.
      equations.spring("drill", LinearForm.of(6 * n + 5), 2e4);
    }
    for (int c = 0; c < 4; c++) {
      int i = c == 0 || c == 3 ? 1 + nx / 24 : nx - 1 - nx / 24;
      int j = c < 2 ? 1 : ny - 1;
      int n = first + i * (ny + 1) + j;
      int leg = vertices.get(CORNER[c] + 2);
      Vec3 arm = place.inSpace(i * a, j * b).minus(model.nodes().get(CORNER[c] + 2));
      for (int d = 0; d < 6; d++) {
        LinearForm form = LinearForm.of(6 * n + d).plus(-1, LinearForm.onArm(leg, arm, d));
        equations.spring("screw", form, d < 3 ? 9000 : 6e6);
      }
    }
  }

  /** Node of each unknown, for an order on nodes. */
  static int[] nodes(SparseSymmetric matrix) {
    int[] node = new int[matrix.size()];
    for (int i = 0; i < node.length; i++) {
      node[i] = i / 6;
    }
    return node;
  }

  /** Vertical unit forces, one at a node, spread over all nodes from {@code first} on. */
  static double[][] positions(SparseSymmetric matrix, int first, int count) {
    List<double[]> all = new ArrayList<>();
    int nodes = matrix.size() / 6 - first;
    for (int p = 0; p < count; p++) {
      double[] f = new double[matrix.size()];
      f[6 * (first + p % nodes) + 2] = -1000 - p;
      all.add(f);
    }
    return all.toArray(double[][]::new);
  }
}
