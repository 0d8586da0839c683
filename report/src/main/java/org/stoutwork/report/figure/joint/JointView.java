package org.stoutwork.report.figure.joint;

import java.util.ArrayList;
import java.util.List;
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
import org.stoutwork.report.units.Amounts;

/**
 * One view of a joint: pieces in millimetres of the real joint, and dimensions in rows beside them.
 * For one thread, and used once.
 */
final class JointView {

  private static final Stroke HIDDEN = Stroke.THIN.dashed(Dash.DASHED);
  private static final Stroke AXIS = Stroke.HAIR.dashed(Dash.CHAIN);
  private static final Fill CUT = new Fill.Hatch(45, 1.3, Stroke.of(0.1, Ink.MID));
  private static final Fill CUT_OTHERWISE = new Fill.Hatch(-45, 0.9, Stroke.of(0.1, Ink.DARK));
  private static final double TITLE = 9;

  private final View view;
  private final Amounts amounts;
  private final TextMeasure measure;
  private final Sketch sketch = new Sketch();
  private final List<Dimension> left = new ArrayList<>();
  private final List<Dimension> right = new ArrayList<>();
  private final List<Dimension> below = new ArrayList<>();

  private record Dimension(Point from, Point to, double real, int row) {}

  JointView(double denominator, Amounts amounts, TextMeasure measure) {
    this.view = new View(new Point(0, 0), denominator);
    this.amounts = amounts;
    this.measure = measure;
  }

  String scale() {
    return view.scale();
  }

  /** An upright rectangle between two real corners, seen. */
  JointView seen(double x0, double z0, double x1, double z1) {
    sketch.rectangle(view.at(x0, z0), view.at(x1, z1), Fill.of(Ink.WHITE), Stroke.MEDIUM);
    return this;
  }

  /** A closed shape, seen. */
  JointView seen(List<Point> real) {
    sketch.polygon(paper(real), Fill.of(Ink.WHITE), Stroke.MEDIUM);
    return this;
  }

  /** A rectangle of the piece that takes the joint, cut through. */
  JointView cut(double x0, double z0, double x1, double z1) {
    return filled(CUT, x0, z0, x1, z1);
  }

  /** A rectangle of the piece that ends in the joint, cut through. */
  JointView cutOtherwise(double x0, double z0, double x1, double z1) {
    return filled(CUT_OTHERWISE, x0, z0, x1, z1);
  }

  private JointView filled(Fill fill, double x0, double z0, double x1, double z1) {
    sketch.area(Sketch.corners(view.at(x0, z0), view.at(x1, z1)), Fill.of(Ink.WHITE));
    sketch.rectangle(view.at(x0, z0), view.at(x1, z1), fill, Stroke.MEDIUM);
    return this;
  }

  /** A closed shape that fills itself with ink: a wedge. */
  JointView solid(List<Point> real) {
    sketch.polygon(paper(real), Fill.of(Ink.PALE), Stroke.THIN);
    return this;
  }

  /** The outline of something that another piece hides. */
  JointView hidden(double x0, double z0, double x1, double z1) {
    sketch.rectangle(view.at(x0, z0), view.at(x1, z1), Fill.NONE, HIDDEN);
    return this;
  }

  /** An edge that another piece hides. */
  JointView hiddenLine(double x0, double z0, double x1, double z1) {
    sketch.line(view.at(x0, z0), view.at(x1, z1), HIDDEN);
    return this;
  }

  JointView axis(double x0, double z0, double x1, double z1) {
    sketch.line(view.at(x0, z0), view.at(x1, z1), AXIS);
    return this;
  }

  /** A round thing seen on its end. */
  JointView round(double x, double z, double diameter) {
    sketch.circle(view.at(x, z), view.length(diameter) / 2, Fill.of(Ink.WHITE), Stroke.MEDIUM);
    return this;
  }

  /** A round thing seen on its end, behind another. */
  JointView roundHidden(double x, double z, double diameter) {
    sketch.circle(view.at(x, z), view.length(diameter) / 2, Fill.NONE, HIDDEN);
    return this;
  }

  /** Takes away the edge at which a piece is drawn broken off, and breaks it with a zigzag. */
  JointView broken(double x0, double z0, double x1, double z1) {
    Point a = view.at(x0, z0);
    Point b = view.at(x1, z1);
    sketch.line(a, b, Stroke.of(0.8, Ink.WHITE));
    Point middle = a.towards(b, 0.5);
    double angle = a.angleTo(b);
    double step = Math.min(1.2, a.to(b) / 6);
    sketch.path(
        List.of(
            a.polar(angle, -1),
            middle.polar(angle, -step),
            middle.polar(angle, -step / 2).polar(angle + 90, 1.4),
            middle.polar(angle, step / 2).polar(angle + 90, -1.4),
            middle.polar(angle, step),
            b.polar(angle, 1)),
        Stroke.HAIR);
    return this;
  }

  /** A level dimension below the view, from one real place to another. */
  JointView below(double x0, double z0, double x1, double z1, int row) {
    boolean known =
        below.stream().anyMatch(d -> same(d.from().x(), x0, 1) && same(d.to().x(), x1, 1));
    if (!known) {
      below.add(new Dimension(view.at(x0, z0), view.at(x1, z1), Math.abs(x1 - x0), row));
    }
    return this;
  }

  /** Upright dimensions left of the view through several heights, each from the place given. */
  JointView left(double x, int row, double... heights) {
    chain(left, x, row, heights);
    return this;
  }

  /** Upright dimensions right of the view through several heights. */
  JointView right(double x, int row, double... heights) {
    chain(right, x, row, heights);
    return this;
  }

  private void chain(List<Dimension> column, double x, int row, double... heights) {
    for (int i = 0; i + 1 < heights.length; i++) {
      double from = heights[i];
      double to = heights[i + 1];
      boolean known =
          column.stream().anyMatch(d -> same(d.from().y(), from, -1) && same(d.to().y(), to, -1));
      if (!known) {
        column.add(new Dimension(view.at(x, from), view.at(x, to), Math.abs(to - from), row));
      }
    }
  }

  private boolean same(double onPaper, double real, int sense) {
    return Math.abs(onPaper - sense * view.length(real)) < 1e-6;
  }

  /** Adds the rows of dimensions round what was drawn. */
  JointView dimensioned() {
    Bounds drawn = reach();
    DimensionRows toLeft = new DimensionRows(measure, false, drawn.left() - 3, -1);
    DimensionRows toRight = new DimensionRows(measure, false, drawn.right() + 5.5, 1);
    left.forEach(d -> put(toLeft, d));
    right.forEach(d -> put(toRight, d));
    sketch.add(toLeft.marks()).add(toRight.marks());
    DimensionRows under = new DimensionRows(measure, true, reach().bottom() + 4.5, 1);
    below.forEach(d -> put(under, d));
    sketch.add(under.marks());
    return this;
  }

  private void put(DimensionRows rows, Dimension d) {
    rows.add(d.from(), d.to(), amounts.bareLength(d.real()), d.row());
  }

  /** The name of the view over it, its base line at a level of the paper. */
  JointView titled(String title, String note, double level) {
    sketch.add(ViewTitle.at(new Point(reach().left(), level), title, note, TITLE, measure));
    return this;
  }

  Bounds reach() {
    return Extent.of(sketch.marks(), measure);
  }

  List<Mark> marks() {
    return sketch.marks();
  }

  private List<Point> paper(List<Point> real) {
    return real.stream().map(p -> view.at(p.x(), p.y())).toList();
  }
}
