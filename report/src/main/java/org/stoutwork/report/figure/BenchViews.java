package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.drawing.draughting.DimensionRows;
import org.stoutwork.report.units.Amounts;

/**
 * A bench to scale: front, left end and plan, with dimensions and the letters of the list of parts.
 */
public final class BenchViews {

  private static final double[] SCALES = {
    1, 2, 2.5, 4, 5, 7.5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500, 1000
  };
  private static final double GAP = 6;
  private static final int MOST_HEIGHTS = 4;
  private static final double MOST_LARGER = 2.5;

  private final Bench bench;
  private final PartList parts;
  private final Amounts amounts;
  private final TextMeasure measure;

  private BenchViews(Bench bench, PartList parts, Amounts amounts, TextMeasure measure) {
    this.bench = bench;
    this.parts = parts;
    this.amounts = amounts;
    this.measure = measure;
  }

  /**
   * The drawing in the largest usual scale that fits.
   *
   * @param bench to draw
   * @param parts of it
   * @param amounts for the figures of dimensions
   * @param measure of the type
   * @param width most width on paper, mm
   * @param height most height on paper, mm
   * @throws IllegalStateException if no usual scale fits
   */
  public static Drawing draw(
      Bench bench,
      PartList parts,
      Amounts amounts,
      TextMeasure measure,
      double width,
      double height) {
    BenchViews views = new BenchViews(bench, parts, amounts, measure);
    for (double scale : SCALES) {
      for (boolean beside : new boolean[] {true, false}) {
        for (double endScale : endScales(scale)) {
          Sketch all = views.together(scale, endScale, beside);
          Bounds reach = Extent.of(all.marks(), measure);
          if (reach.width() <= width && reach.height() <= height) {
            return all.fitted(measure, 0);
          }
        }
      }
    }
    throw new IllegalStateException(
        "the bench is too large for a drawing of " + width + " mm by " + height + " mm");
  }

  /** The end is narrow: it may be drawn larger than the long views, the largest first. */
  private static List<Double> endScales(double scale) {
    return Arrays.stream(SCALES)
        .filter(s -> s <= scale && s >= scale / MOST_LARGER)
        .boxed()
        .toList();
  }

  private Sketch together(double scale, double endScale, boolean beside) {
    List<Mark> front = front(scale);
    List<Mark> end = end(endScale);
    List<Mark> plan = plan(scale);
    Bounds f = Extent.of(front, measure);
    Bounds p = Extent.of(plan, measure);
    Bounds e = Extent.of(end, measure);
    Sketch all = new Sketch();
    all.add(front);
    double down = f.bottom() + GAP - p.top();
    move(plan, 0, down, all);
    if (beside) {
      double right = Math.max(f.right(), p.right()) + GAP - e.left();
      move(end, right, f.top() - e.top(), all);
    } else {
      move(end, f.left() - e.left(), p.bottom() + down + GAP - e.top(), all);
    }
    return all;
  }

  private static void move(List<Mark> marks, double right, double down, Sketch all) {
    marks.forEach(m -> all.add(m.moved(right, down)));
  }

  private Set<String> marksOf(Box.Kind... kinds) {
    Set<String> out = new HashSet<>();
    for (Box box : parts.boxes()) {
      if (List.of(kinds).contains(box.kind())) {
        out.add(box.mark());
      }
    }
    return out;
  }

  private List<Mark> front(double scale) {
    BenchView v = new BenchView(Side.FRONT, scale, measure);
    v.boxes(parts.boxes());
    Set<String> named = marksOf(Box.Kind.TOP, Box.Kind.LEG, Box.Kind.STRETCHER);
    named.addAll(machines());
    v.letters(parts.boxes(), named);
    double length = bench.top().length().mm();
    double height = bench.height().mm();
    DimensionRows left = v.left();
    Set<List<Double>> depths = new LinkedHashSet<>();
    boolean anyInSight = bench.stretchers().stream().anyMatch(s -> s.line() != StretcherLine.BACK);
    bench.stretchers().stream()
        .filter(s -> !anyInSight || s.line() != StretcherLine.BACK)
        .forEach(s -> depths.add(List.of(s.centreAt().mm(), s.depth().mm())));
    depths(v, left, depths, 0);
    left.add(v.at(0, 0), v.at(0, height), amounts.bareLength(height), depths.isEmpty() ? 0 : 1);
    DimensionRows right = v.right();
    double under = Layout.underside(bench);
    right.add(v.at(length, under), v.at(length, height), amounts.bareLength(height - under), 0);
    Set<Double> levels = new TreeSet<>();
    for (Stretcher s : bench.stretchers()) {
      levels.add(s.centreAt().mm());
    }
    double last = bench.endFrames().get(bench.endFrames().size() - 1).at().mm();
    heights(v, right, levels, last);
    v.add(left).add(right);
    List<Double> chain = new ArrayList<>(List.of(0.0));
    bench.endFrames().forEach(f -> chain.add(f.at().mm()));
    chain.add(length);
    DimensionRows below = v.below();
    chain(v, below, chain);
    below.add(v.at(0, 0), v.at(length, 0), amounts.bareLength(length), 1);
    return v.add(below).titled();
  }

  /** Machines have their place in the front view, jaws of vises in the plan. */
  private Set<String> machines() {
    Set<String> names = new HashSet<>();
    bench.weights().forEach(w -> names.add(w.name()));
    Set<String> out = new HashSet<>();
    parts.lines().stream()
        .filter(l -> names.contains(l.name()) && l.sizes().isEmpty())
        .forEach(l -> out.add(l.mark()));
    return out;
  }

  private void chain(BenchView v, DimensionRows rows, List<Double> places) {
    for (int i = 0; i + 1 < places.size(); i++) {
      double a = places.get(i);
      double b = places.get(i + 1);
      rows.add(v.at(a, 0), v.at(b, 0), amounts.bareLength(Math.abs(b - a)), 0);
    }
  }

  private void heights(BenchView v, DimensionRows rows, Set<Double> levels, double from) {
    levels.stream()
        .limit(MOST_HEIGHTS)
        .forEach(z -> rows.add(v.at(from, 0), v.at(from, z), amounts.bareLength(z), 0));
  }

  /** Depths of level pieces from their lower to their upper edges. */
  private void depths(BenchView v, DimensionRows rows, Set<List<Double>> pieces, double from) {
    pieces.stream()
        .limit(MOST_HEIGHTS)
        .forEach(
            piece -> {
              double low = piece.get(0) - piece.get(1) / 2;
              double high = piece.get(0) + piece.get(1) / 2;
              rows.add(v.at(from, low), v.at(from, high), amounts.bareLength(piece.get(1)), 0);
            });
  }

  private List<Mark> end(double scale) {
    BenchView v = new BenchView(Side.END, scale, measure);
    v.boxes(parts.boxes());
    v.letters(parts.boxes(), marksOf(Box.Kind.RAIL, Box.Kind.FOOT));
    EndFrame frame = bench.endFrames().get(0);
    double width = bench.top().width().mm();
    DimensionRows left = v.left();
    Set<Double> levels = new TreeSet<>();
    levels.add(frame.topRail().centreAt().mm());
    frame.bottomRail().ifPresent(r -> levels.add(r.centreAt().mm()));
    heights(v, left, levels, Layout.backLegY(bench, frame));
    DimensionRows right = v.right();
    Set<List<Double>> depths = new LinkedHashSet<>();
    depths.add(List.of(frame.topRail().centreAt().mm(), frame.topRail().depth().mm()));
    frame.bottomRail().ifPresent(r -> depths.add(List.of(r.centreAt().mm(), r.depth().mm())));
    depths(v, right, depths, Layout.frontLegY(frame));
    v.add(left).add(right);
    DimensionRows below = v.below();
    chain(v, below, List.of(0.0, Layout.frontLegY(frame), Layout.backLegY(bench, frame), width));
    double front = frame.frontInset().mm();
    double back = frame.backInset().mm();
    below.add(v.at(0, 0), v.at(front, 0), amounts.bareLength(front), 1);
    below.add(v.at(width - back, 0), v.at(width, 0), amounts.bareLength(back), 1);
    below.add(v.at(0, 0), v.at(width, 0), amounts.bareLength(width), 2);
    frame
        .foot()
        .ifPresent(
            f -> {
              double a = Layout.standFront(bench, frame);
              double b = Layout.standBack(bench, frame);
              below.add(v.at(a, 0), v.at(b, 0), amounts.bareLength(b - a), 2);
            });
    return v.add(below).titled();
  }

  private List<Mark> plan(double scale) {
    BenchView v = new BenchView(Side.PLAN, scale, measure);
    v.boxes(parts.boxes());
    v.holes(bench.top().dogHoles());
    Set<String> bought = new LinkedHashSet<>(marksOf(Box.Kind.OUTLINE));
    bought.removeAll(machines());
    v.letters(parts.boxes(), bought);
    double width = bench.top().width().mm();
    DimensionRows left = v.left();
    DimensionRows below = v.below();
    for (Vise vise : bench.vises()) {
      if (vise.edge().isLong()) {
        Point edge = v.at(0, 0);
        below.add(edge, v.at(vise.at().mm(), 0), amounts.bareLength(vise.at().mm()), 0);
      } else {
        left.add(v.at(0, 0), v.at(0, vise.at().mm()), amounts.bareLength(vise.at().mm()), 0);
      }
    }
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine m) {
        below.add(v.at(0, 0), v.at(m.x().mm(), 0), amounts.bareLength(m.x().mm()), 0);
        left.add(v.at(0, 0), v.at(0, m.y().mm()), amounts.bareLength(m.y().mm()), 0);
      }
    }
    for (DogHoles row : bench.top().dogHoles()) {
      double y = row.fromFront().mm();
      double first = row.atMm(0);
      left.add(v.at(0, 0), v.at(0, y), amounts.bareLength(y), 0);
      below.add(v.at(0, 0), v.at(first, 0), amounts.bareLength(first), 0);
      if (row.count() > 1) {
        double next = row.atMm(1);
        below.add(v.at(first, 0), v.at(next, 0), amounts.bareLength(next - first), 0);
      }
    }
    left.add(v.at(0, 0), v.at(0, width), amounts.bareLength(width), 0);
    return v.add(left).add(below).titled();
  }
}
