package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Leg;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;

/** Goes through a bench part by part. For one thread, and used once. */
final class PartCollector {

  /** Jaws are drawn this deep, since only their outreach and width are known, mm. */
  private static final double JAW_DEPTH = 140;

  private final Bench bench;
  private final Map<String, PartList.Line> lines = new LinkedHashMap<>();
  private final List<Box> boxes = new ArrayList<>();

  PartCollector(Bench bench) {
    this.bench = bench;
  }

  PartList collect() {
    top();
    bench.endFrames().forEach(this::legs);
    for (EndFrame frame : bench.endFrames()) {
      rail(frame, frame.topRail(), "top rail");
      frame.bottomRail().ifPresent(r -> rail(frame, r, "bottom rail"));
      frame.foot().ifPresent(f -> foot(frame, f));
    }
    for (Stretcher stretcher : bench.stretchers()) {
      for (int bay = 0; bay + 1 < bench.endFrames().size(); bay++) {
        stretcher(stretcher, bay);
      }
    }
    bench.vises().forEach(this::vise);
    bench.weights().forEach(this::weight);
    return new PartList(List.copyOf(lines.values()), boxes);
  }

  /** The letter of a part; parts with the same key share one. */
  private String mark(String key, String name, List<Double> sizes, String wood) {
    PartList.Line old = lines.get(key);
    String letter = old == null ? letter(lines.size()) : old.mark();
    String names =
        old == null || List.of(old.name().split(", ")).contains(name)
            ? old == null ? name : old.name()
            : old.name() + ", " + name;
    int count = old == null ? 1 : old.count() + 1;
    lines.put(key, new PartList.Line(letter, names, count, sizes, wood));
    return letter;
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  private void top() {
    double z = Layout.underside(bench);
    int n = 1;
    for (TopLayer layer : bench.top().layers()) {
      double t = layer.thickness().mm();
      String name =
          bench.top().layers().size() == 1
              ? "top"
              : "top, layer " + n + " from below, grain " + layer.grain().words();
      double length = bench.top().length().mm();
      double width = bench.top().width().mm();
      String mark = mark("top" + n, name, List.of(t, width, length), layer.wood());
      boxes.add(
          Box.of(mark, Box.Kind.TOP, Box.from(0, length), Box.from(0, width), Box.from(z, z + t)));
      z += t;
      n++;
    }
  }

  private void legs(EndFrame frame) {
    Leg leg = frame.leg();
    double[] z = Box.from(Layout.legBottom(frame), Layout.legTop(bench, frame));
    List<Double> sizes = List.of(leg.along().mm(), leg.across().mm(), z[1] - z[0]);
    for (double y : new double[] {Layout.frontLegY(frame), Layout.backLegY(bench, frame)}) {
      String mark = mark("leg" + sizes + leg.wood(), "leg", sizes, leg.wood());
      boxes.add(
          Box.of(
              mark,
              Box.Kind.LEG,
              Box.about(frame.at().mm(), leg.along().mm()),
              Box.about(y, leg.across().mm()),
              z));
    }
  }

  private void rail(EndFrame frame, Rail rail, String name) {
    List<Double> sizes = List.of(rail.thickness().mm(), rail.depth().mm(), rail.length().mm());
    String mark = mark(name + sizes + rail.wood(), name, sizes, rail.wood());
    double half = frame.leg().across().mm() / 2;
    double[] y =
        rail.seat() == Seat.OVER
            ? Box.about(Layout.footMiddle(bench, frame), rail.length().mm())
            : Box.from(Layout.frontLegY(frame) + half, Layout.backLegY(bench, frame) - half);
    boxes.add(
        Box.of(
            mark,
            Box.Kind.RAIL,
            Box.about(frame.at().mm(), rail.thickness().mm()),
            y,
            Box.about(rail.centreAt().mm(), rail.depth().mm())));
  }

  private void foot(EndFrame frame, Foot foot) {
    List<Double> sizes = List.of(foot.thickness().mm(), foot.depth().mm(), foot.length().mm());
    String mark = mark("foot" + sizes + foot.wood(), "foot", sizes, foot.wood());
    boxes.add(
        Box.of(
            mark,
            Box.Kind.FOOT,
            Box.about(frame.at().mm(), foot.thickness().mm()),
            Box.about(Layout.footMiddle(bench, frame), foot.length().mm()),
            Box.from(0, foot.depth().mm())));
  }

  private void stretcher(Stretcher s, int bay) {
    EndFrame left = bench.endFrames().get(bay);
    EndFrame right = bench.endFrames().get(bay + 1);
    double x0 = left.at().mm() + shoulder(left, s);
    double x1 = right.at().mm() - shoulder(right, s);
    List<Double> sizes = List.of(s.thickness().mm(), s.depth().mm(), x1 - x0);
    String key = "stretcher" + sizes + s.wood() + s.centreAt() + s.extension();
    String mark = mark(key, s.name(), sizes, s.wood());
    double[] y = Box.about(y(left, s), s.thickness().mm());
    boxes.add(
        Box.of(
            mark,
            Box.Kind.STRETCHER,
            Box.from(x0, x1),
            y,
            Box.about(s.centreAt().mm(), s.depth().mm())));
    s.extension()
        .ifPresent(
            e -> {
              double[] z = Box.about(s.endCentreMm(), e.depth().mm());
              double l = e.length().mm();
              boxes.add(Box.of(mark, Box.Kind.STRETCHER, Box.from(x0, x0 + l), y, z));
              boxes.add(Box.of(mark, Box.Kind.STRETCHER, Box.from(x1 - l, x1), y, z));
            });
  }

  private double shoulder(EndFrame frame, Stretcher s) {
    return s.line() == StretcherLine.MIDDLE
        ? Layout.railOf(frame, s).thickness().mm() / 2
        : frame.leg().along().mm() / 2;
  }

  private double y(EndFrame frame, Stretcher s) {
    return switch (s.line()) {
      case FRONT -> Layout.frontLegY(frame);
      case BACK -> Layout.backLegY(bench, frame);
      case MIDDLE -> bench.top().width().mm() / 2;
    };
  }

  private void vise(Vise v) {
    String mark = mark("vise" + v.name(), v.name(), List.of(), "");
    double[] along = Box.about(v.at().mm(), v.jawWidth().mm());
    double[] z = Box.from(bench.height().mm() - JAW_DEPTH, bench.height().mm());
    double out = Math.max(v.outreach().mm(), 1);
    double length = bench.top().length().mm();
    double width = bench.top().width().mm();
    boxes.add(
        switch (v.edge()) {
          case FRONT -> Box.of(mark, Box.Kind.OUTLINE, along, Box.from(-out, 0), z);
          case BACK -> Box.of(mark, Box.Kind.OUTLINE, along, Box.from(width, width + out), z);
          case LEFT -> Box.of(mark, Box.Kind.OUTLINE, Box.from(-out, 0), along, z);
          case RIGHT -> Box.of(mark, Box.Kind.OUTLINE, Box.from(length, length + out), along, z);
        });
  }

  /** What only lies on the bench has no place in the drawing; a machine has. */
  private void weight(Weight weight) {
    if (weight instanceof Weight.Machine m) {
      String mark = mark("weight" + m.name(), m.name(), List.of(), "");
      double z = bench.height().mm();
      boxes.add(
          Box.of(
              mark,
              Box.Kind.OUTLINE,
              Box.about(m.x().mm(), m.baseAlong().mm()),
              Box.about(m.y().mm(), m.baseAcross().mm()),
              Box.from(z, z + 2 * Math.max(m.centreAbove().mm(), 20))));
    }
  }
}
