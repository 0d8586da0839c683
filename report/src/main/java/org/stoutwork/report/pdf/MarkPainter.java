package org.stoutwork.report.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.HatchLines;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Run;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/** Paints marks on a page; turns millimetres from the top into points from the foot. */
final class MarkPainter {

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Length of the handle of a cubic curve for a quarter circle of radius 1. */
  private static final double QUARTER = 0.5522847498307936;

  private final PdfContentByte canvas;
  private final TypeCase type;
  private final double paperHeight;

  MarkPainter(PdfContentByte canvas, TypeCase type, double paperHeight) {
    this.canvas = canvas;
    this.type = type;
    this.paperHeight = paperHeight;
  }

  void paint(Mark mark) {
    if (mark instanceof Mark.Path path) {
      trace(path.points());
      pen(path.stroke());
      canvas.stroke();
    } else if (mark instanceof Mark.Polygon polygon) {
      polygon(polygon);
    } else if (mark instanceof Mark.Arc arc) {
      arc(arc);
    } else if (mark instanceof Mark.Label label) {
      label(label);
    }
  }

  private void polygon(Mark.Polygon polygon) {
    if (polygon.fill() instanceof Fill.Hatch hatch) {
      for (List<Point> line : HatchLines.within(polygon.points(), hatch)) {
        trace(line);
        pen(hatch.stroke());
        canvas.stroke();
      }
    }
    if (inks(polygon.fill(), polygon.outline())) {
      trace(polygon.points());
      canvas.closePath();
      finish(polygon.fill(), polygon.outline());
    }
  }

  private void arc(Mark.Arc arc) {
    if (Math.abs(arc.sweep()) < 360) {
      arc.outline()
          .ifPresent(
              stroke -> {
                curve(arc);
                pen(stroke);
                canvas.stroke();
              });
    } else if (inks(arc.fill(), arc.outline())) {
      circle(arc);
      canvas.closePath();
      finish(arc.fill(), arc.outline());
    }
  }

  private void curve(Mark.Arc arc) {
    int pieces = (int) Math.ceil(Math.abs(arc.sweep()) / 90);
    double step = Math.toRadians(arc.sweep() / pieces);
    double handle = arc.radius() * 4.0 / 3 * Math.tan(Math.abs(step) / 4);
    double turn = Math.signum(step) * 90;
    Point from = arc.centre().polar(arc.start(), arc.radius());
    canvas.moveTo(x(from), y(from));
    for (int i = 1; i <= pieces; i++) {
      double a = arc.start() + arc.sweep() * (i - 1) / pieces;
      double b = arc.start() + arc.sweep() * i / pieces;
      Point to = arc.centre().polar(b, arc.radius());
      bend(from.polar(a + turn, handle), to.polar(b - turn, handle), to);
      from = to;
    }
  }

  private void circle(Mark.Arc arc) {
    double r = arc.radius();
    double h = r * QUARTER;
    Point c = arc.centre();
    Point start = c.plus(r, 0);
    canvas.moveTo(x(start), y(start));
    bend(c.plus(r, -h), c.plus(h, -r), c.plus(0, -r));
    bend(c.plus(-h, -r), c.plus(-r, -h), c.plus(-r, 0));
    bend(c.plus(-r, h), c.plus(-h, r), c.plus(0, r));
    bend(c.plus(h, r), c.plus(r, h), c.plus(r, 0));
  }

  private void bend(Point a, Point b, Point to) {
    canvas.curveTo(x(a), y(a), x(b), y(b), x(to), y(to));
  }

  private static boolean inks(Fill fill, Optional<Stroke> outline) {
    return fill instanceof Fill.Plain || outline.isPresent();
  }

  private void finish(Fill fill, Optional<Stroke> outline) {
    outline.ifPresent(this::pen);
    if (fill instanceof Fill.Plain plain) {
      brush(plain.ink());
      if (outline.isPresent()) {
        canvas.fillStroke();
      } else {
        canvas.fill();
      }
    } else {
      canvas.stroke();
    }
  }

  private void label(Mark.Label label) {
    double angle = Math.toRadians(label.degrees());
    float cos = (float) Math.cos(angle);
    float sin = (float) Math.sin(angle);
    double along = -type.width(label.text(), label.points()) * label.align().part();
    brush(label.ink());
    canvas.beginText();
    for (Run run : label.text().runs()) {
      double size = label.points() * run.level().size();
      double rise = run.level().rise() * label.points() * TextMeasure.MM_PER_POINT;
      for (TypeCase.Stretch stretch : type.stretches(run.text(), run.face())) {
        Point at = label.at().polar(label.degrees(), along).polar(label.degrees() + 90, rise);
        canvas.setFontAndSize(stretch.font(), (float) size);
        canvas.setTextMatrix(cos, sin, -sin, cos, x(at), y(at));
        canvas.showText(stretch.text());
        along += stretch.font().getWidth(stretch.text()) / 1000.0 * size * TextMeasure.MM_PER_POINT;
      }
    }
    canvas.endText();
  }

  private void trace(List<Point> points) {
    canvas.moveTo(x(points.get(0)), y(points.get(0)));
    for (Point point : points.subList(1, points.size())) {
      canvas.lineTo(x(point), y(point));
    }
  }

  private void pen(Stroke stroke) {
    Ink ink = stroke.ink();
    canvas.setLineWidth((float) (stroke.width() * POINTS_PER_MM));
    canvas.setRGBColorStrokeF((float) ink.red(), (float) ink.green(), (float) ink.blue());
    List<Double> dash = stroke.dash().lengths(stroke.width());
    float[] lengths = new float[dash.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = (float) (dash.get(i) * POINTS_PER_MM);
    }
    canvas.setLineDash(lengths, 0);
  }

  private void brush(Ink ink) {
    canvas.setRGBColorFillF((float) ink.red(), (float) ink.green(), (float) ink.blue());
  }

  private static float x(Point p) {
    return (float) (p.x() * POINTS_PER_MM);
  }

  private float y(Point p) {
    return (float) ((paperHeight - p.y()) * POINTS_PER_MM);
  }
}
