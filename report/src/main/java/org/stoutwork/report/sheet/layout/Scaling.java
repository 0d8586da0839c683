package org.stoutwork.report.sheet.layout;

import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Stroke;

/** Scales a drawing evenly, lettering and lines included. */
final class Scaling {

  private final double factor;

  private Scaling(double factor) {
    this.factor = factor;
  }

  static Drawing of(Drawing drawing, double factor) {
    Scaling scaling = new Scaling(factor);
    return new Drawing(
        drawing.width() * factor,
        drawing.height() * factor,
        drawing.marks().stream().map(scaling::mark).toList());
  }

  private Mark mark(Mark mark) {
    if (mark instanceof Mark.Path path) {
      return new Mark.Path(points(path.points()), stroke(path.stroke()));
    }
    if (mark instanceof Mark.Polygon p) {
      return new Mark.Polygon(points(p.points()), fill(p.fill()), stroke(p.outline()));
    }
    if (mark instanceof Mark.Arc arc) {
      return new Mark.Arc(
          point(arc.centre()),
          arc.radius() * factor,
          arc.start(),
          arc.sweep(),
          fill(arc.fill()),
          stroke(arc.outline()));
    }
    Mark.Label label = (Mark.Label) mark;
    return new Mark.Label(
        point(label.at()),
        label.text(),
        label.points() * factor,
        label.align(),
        label.degrees(),
        label.ink());
  }

  private Point point(Point p) {
    return new Point(p.x() * factor, p.y() * factor);
  }

  private List<Point> points(List<Point> points) {
    return points.stream().map(this::point).toList();
  }

  private Stroke stroke(Stroke stroke) {
    return new Stroke(Math.max(0.1, stroke.width() * factor), stroke.ink(), stroke.dash());
  }

  private Optional<Stroke> stroke(Optional<Stroke> stroke) {
    return stroke.map(this::stroke);
  }

  private Fill fill(Fill fill) {
    return fill instanceof Fill.Hatch hatch
        ? new Fill.Hatch(
            hatch.degrees(), Math.max(0.3, hatch.spacing() * factor), stroke(hatch.stroke()))
        : fill;
  }
}
