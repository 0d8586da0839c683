package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Dash;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.drawing.draughting.DimensionRows;
import org.stoutwork.report.drawing.draughting.View;
import org.stoutwork.report.drawing.draughting.ViewTitle;

/** One view of a bench: boxes, letters, dimensions, title. */
final class BenchView {

  private static final Stroke HIDDEN = Stroke.THIN.dashed(Dash.DASHED);
  private static final Stroke OUTLINE = Stroke.THIN.dashed(Dash.CHAIN);

  private final Side side;
  private final View view;
  private final TextMeasure measure;
  private final Sketch sketch = new Sketch();

  /** Drawn last, so that no line runs through them. */
  private final List<Mark> letters = new ArrayList<>();

  BenchView(Side side, double denominator, TextMeasure measure) {
    this.side = side;
    this.view = new View(new Point(0, 0), denominator);
    this.measure = measure;
  }

  /** A real place of this view on paper: to the right, upward. */
  Point at(double across, double up) {
    return view.at(side == Side.END ? -across : across, up);
  }

  /** Draws boxes, the far ones first. */
  BenchView boxes(List<Box> boxes) {
    List<Box> ordered = new ArrayList<>(boxes);
    ordered.sort(Comparator.comparingDouble(side::nearness));
    Set<List<Point>> hidden = new HashSet<>();
    for (Box box : ordered) {
      if (side != Side.PLAN || box.kind() == Box.Kind.TOP || box.kind() == Box.Kind.OUTLINE) {
        draw(box);
      }
    }
    for (Box box : ordered) {
      boolean below =
          side == Side.PLAN && box.kind() != Box.Kind.TOP && box.kind() != Box.Kind.OUTLINE;
      if (below && hidden.add(corners(box))) {
        sketch.polygon(corners(box), Fill.NONE, HIDDEN);
      }
    }
    if (side != Side.PLAN) {
      Bounds reach = Extent.of(sketch.marks(), measure);
      sketch.line(new Point(reach.left(), 0), new Point(reach.right(), 0), Stroke.of(0.4, Ink.MID));
    }
    return this;
  }

  private void draw(Box box) {
    boolean known = box.kind() != Box.Kind.OUTLINE;
    sketch.polygon(
        corners(box), known ? Fill.of(Ink.WHITE) : Fill.NONE, known ? Stroke.MEDIUM : OUTLINE);
  }

  private List<Point> corners(Box box) {
    double[] u = side.across(box);
    double[] v = side.up(box);
    return Sketch.corners(view.at(u[0], v[1]), view.at(u[1], v[0]));
  }

  /** Draws holes through the top, as they are seen from above. */
  BenchView holes(List<DogHoles> rows) {
    for (DogHoles row : rows) {
      double half = row.size().mm() / 2;
      for (int i = 0; i < row.count(); i++) {
        double x = row.atMm(i);
        double y = row.fromFront().mm();
        if (row.shape() == DogHoles.Shape.ROUND) {
          sketch.circle(at(x, y), view.length(half), Fill.NONE, Stroke.THIN);
        } else {
          sketch.polygon(
              Sketch.corners(at(x - half, y + half), at(x + half, y - half)),
              Fill.NONE,
              Stroke.THIN);
        }
      }
    }
    return this;
  }

  /** Names parts by their letters, each once. */
  BenchView letters(List<Box> boxes, Set<String> wanted) {
    Balloons balloons = new Balloons();
    Set<String> done = new LinkedHashSet<>();
    List<Box> nearest = new ArrayList<>(boxes);
    nearest.sort(Comparator.comparingDouble(side::nearness).reversed());
    for (Box box : nearest) {
      if (wanted.contains(box.mark()) && done.add(box.mark())) {
        letters.addAll(
            balloons.on(Bounds.around(corners(box)), box.mark(), box.kind() == Box.Kind.FOOT));
      }
    }
    return this;
  }

  /** Rows of dimensions below everything drawn so far. */
  DimensionRows below() {
    return new DimensionRows(measure, true, reach().bottom() + 5.5, 1);
  }

  /** Columns of dimensions left of everything drawn so far. */
  DimensionRows left() {
    return new DimensionRows(measure, false, reach().left() - 2.5, -1);
  }

  /** Columns of dimensions right of everything drawn so far. */
  DimensionRows right() {
    return new DimensionRows(measure, false, reach().right() + 5.5, 1);
  }

  BenchView add(DimensionRows rows) {
    sketch.add(rows.marks());
    return this;
  }

  /** Adds any mark. */
  BenchView add(List<Mark> marks) {
    sketch.add(marks);
    return this;
  }

  /** The view with its title over it. */
  List<Mark> titled() {
    Bounds reach = reach();
    sketch.add(
        ViewTitle.at(
            new Point(reach.left(), reach.top() - 4), side.title(), view.scale(), 10, measure));
    sketch.add(letters);
    return sketch.marks();
  }

  private Bounds reach() {
    List<Mark> all = new ArrayList<>(sketch.marks());
    all.addAll(letters);
    return Extent.of(all, measure);
  }

  View view() {
    return view;
  }
}
