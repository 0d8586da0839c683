package org.stoutwork.reference.beams;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/**
 * One row of the beam table as a frame along x: a node at each support, hinge and end, and members
 * between them that carry the loads wherever these lie.
 */
final class StraightBeam {
  private final Map<String, String> row;
  private final List<Double> places = new ArrayList<>();
  private final List<String[]> supports = new ArrayList<>();

  StraightBeam(Map<String, String> row) {
    this.row = row;
    TreeSet<Double> set = new TreeSet<>(List.of(0.0, number("L_mm")));
    for (String support : row.get("supports").split(";", -1)) {
      String[] parts = support.split(":", -1);
      supports.add(parts);
      set.add(Double.parseDouble(parts[0]));
    }
    places.addAll(set);
  }

  double number(String head) {
    return Double.parseDouble(row.get(head));
  }

  List<Double> places() {
    return places;
  }

  /** The member that contains a place, its number from 0. */
  int memberAt(double x) {
    for (int k = 1; k < places.size(); k++) {
      if (x <= places.get(k)) {
        return k - 1;
      }
    }
    throw new IllegalArgumentException("outside the beam: " + x);
  }

  FrameModel model() {
    FrameModelBuilder b = FrameModel.builder();
    b.material("m", number("E_MPa"), number("G_MPa"), 0);
    double area = number("A_mm2");
    double shear = row.get("shear").equals("yes") ? area * 5 / 6 : 0;
    b.section("s", new CrossSection(area, number("I_mm4"), 1e6, 1e6, shear, shear));
    for (int k = 0; k < places.size(); k++) {
      b.node("n" + k, places.get(k), 0, 0);
      b.fixed("n" + k, Direction.UY, Direction.RX, Direction.RZ);
    }
    b.fixed("n0", Direction.UX);
    for (int k = 0; k + 1 < places.size(); k++) {
      boolean hinge = isHinge(places.get(k + 1));
      MemberEnd end = hinge ? MemberEnd.RIGID.free(Direction.RY) : MemberEnd.RIGID;
      b.member("b" + k, "n" + k, "n" + (k + 1), "s", "m", 0, MemberEnd.RIGID, end);
    }
    supports.forEach(s -> support(b, s));
    return b.build();
  }

  private boolean isHinge(double x) {
    return supports.stream().anyMatch(s -> s[1].equals("hinge") && Double.parseDouble(s[0]) == x);
  }

  private void support(FrameModelBuilder b, String[] s) {
    String node = "n" + places.indexOf(Double.parseDouble(s[0]));
    double value = s.length > 2 ? Double.parseDouble(s[2]) : 0;
    switch (s[1]) {
      case "pin" -> b.support(node, Direction.UZ, Restraint.prescribed(value));
      case "fix" -> b.fixed(node, Direction.UZ, Direction.RY);
      case "guide" -> b.fixed(node, Direction.RY);
      case "spring" -> b.support(node, Direction.UZ, Restraint.elastic(value));
      case "rot" -> {
        b.fixed(node, Direction.UZ);
        b.support(node, Direction.RY, Restraint.elastic(value));
      }
      case "hinge" -> {}
      default -> throw new IllegalArgumentException(s[1]);
    }
  }

  LoadCase loads() {
    List<Load> loads = new ArrayList<>();
    for (String load : row.get("loads").split(";", -1)) {
      if (!load.isEmpty()) {
        String[] p = load.split(":", -1);
        double[] v = new double[p.length];
        for (int i = 1; i < p.length; i++) {
          v[i] = Double.parseDouble(p[i]);
        }
        switch (p[0]) {
          case "P" -> loads.add(point(v[1], new Vec3(0, 0, -v[2]), Vec3.ZERO));
          case "M" -> loads.add(point(v[1], Vec3.ZERO, new Vec3(0, -v[2], 0)));
          case "Q" -> trapezoid(loads, v);
          default -> throw new IllegalArgumentException(load);
        }
      }
    }
    return new LoadCase("loads", loads);
  }

  private Load point(double x, Vec3 force, Vec3 moment) {
    int node = places.indexOf(x);
    if (node >= 0) {
      return new Load.OnNode("n" + node, force, moment);
    }
    int k = memberAt(x);
    return new Load.OnMemberPoint("b" + k, x - places.get(k), force, moment, Load.Axes.GLOBAL);
  }

  private void trapezoid(List<Load> loads, double[] v) {
    for (int k = 0; k + 1 < places.size(); k++) {
      double from = Math.max(v[1], places.get(k));
      double to = Math.min(v[2], places.get(k + 1));
      if (to > from) {
        loads.add(
            new Load.OnMemberLine(
                "b" + k,
                from - places.get(k),
                to - places.get(k),
                new Vec3(0, 0, -intensity(v, from)),
                new Vec3(0, 0, -intensity(v, to)),
                Load.Axes.LOCAL));
      }
    }
  }

  private static double intensity(double[] v, double x) {
    return v[3] + (v[4] - v[3]) * (x - v[1]) / (v[2] - v[1]);
  }
}
