package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Dash;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Markup;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.drawing.draughting.Leaders;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.result.Curve;
import org.stoutwork.result.Shape;

/** A bench before and after it moved, its movements drawn larger. */
public final class ShapeDrawing {

  private static final Stroke BEFORE = Stroke.of(0.18, Ink.MID).dashed(Dash.DASHED);
  private static final Stroke AFTER = Stroke.of(0.38, Ink.ACCENT);

  /** Largest movement on paper over the size of the bench. */
  private static final double SHOWN = 0.06;

  private static final double POINTS = 9;
  private static final double HEAD = 9;

  private ShapeDrawing() {}

  /**
   * A drawing with the factor of its movements.
   *
   * @param drawing what is shown
   * @param factor as printed
   * @param seen from where, in words
   */
  public record Drawn(Drawing drawing, String factor, String seen) {}

  /** Whether a shape is seen square to a side of the bench, which takes less room. */
  public static boolean seenSquare(Shape shape) {
    return Look.of(shape) != Look.SLANTING;
  }

  /** From where a shape is looked at. */
  private enum Look {
    FRONT,
    END,
    SLANTING;

    static Look of(Shape shape) {
      return switch (shape.check()) {
        case "sway-along" -> FRONT;
        case "sway-across" -> END;
        default -> SLANTING;
      };
    }

    String words() {
      return switch (this) {
        case FRONT -> "from the front";
        case END -> "from the left end, the front edge on the right";
        case SLANTING -> "slantwise from the front and above";
      };
    }

    double[] of(double x, double y, double z) {
      return switch (this) {
        case FRONT -> new double[] {x, z};
        case END -> new double[] {-y, z};
        case SLANTING -> new double[] {x + 0.5 * y, z + 0.32 * y};
      };
    }
  }

  /** Draws a shape into a frame of the given size, mm. */
  public static Drawn draw(
      Shape shape, Amounts amounts, TextMeasure measure, double width, double height) {
    Look look = Look.of(shape);
    double factor = factor(shape, look);
    List<double[]> all = new ArrayList<>();
    for (Curve curve : shape.curves()) {
      for (Curve.Point p : curve.points()) {
        all.add(look.of(p.x(), p.y(), p.z()));
        all.add(moved(look, p, factor));
      }
    }
    Frame frame = Frame.around(all, new Bounds(2, HEAD + 6, width - 2, height - 2));
    Sketch sketch = new Sketch();
    for (Curve curve : shape.curves()) {
      line(sketch, frame, curve.points().stream().map(p -> look.of(p.x(), p.y(), p.z())), BEFORE);
    }
    for (Curve curve : shape.curves()) {
      line(sketch, frame, curve.points().stream().map(p -> moved(look, p, factor)), AFTER);
    }
    mark(sketch, frame, shape, look, factor, amounts, width);
    key(sketch, factor);
    return new Drawn(
        sketch.drawing(width, height).requireInside(measure),
        Writing.number(factor, 3),
        look.words());
  }

  private static double[] moved(Look look, Curve.Point p, double factor) {
    return look.of(p.x() + factor * p.ux(), p.y() + factor * p.uy(), p.z() + factor * p.uz());
  }

  private static void line(
      Sketch sketch, Frame frame, java.util.stream.Stream<double[]> places, Stroke stroke) {
    List<Point> points = places.map(frame::at).toList();
    if (points.size() > 1 && points.get(0).to(points.get(points.size() - 1)) > 0.05) {
      sketch.path(points, stroke);
    }
  }

  /** A factor of 1, 2 or 5 with noughts, so that movements can be measured back. */
  private static double factor(Shape shape, Look look) {
    double size = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Curve curve : shape.curves()) {
      for (Curve.Point p : curve.points()) {
        double along = look == Look.END ? p.y() : p.x();
        low = Math.min(low, along);
        high = Math.max(high, along);
        size = Math.max(size, p.z());
      }
    }
    double wanted = SHOWN * Math.max(size, high - low) / Math.max(shape.largest(), 1e-9);
    double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
    double lead = wanted / ten;
    return ten * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  private static void mark(
      Sketch sketch,
      Frame frame,
      Shape shape,
      Look look,
      double factor,
      Amounts amounts,
      double width) {
    Curve.Point most = null;
    double size = -1;
    for (Curve curve : shape.curves()) {
      for (Curve.Point p : curve.points()) {
        double s = Math.sqrt(p.ux() * p.ux() + p.uy() * p.uy() + p.uz() * p.uz());
        if (s > size) {
          size = s;
          most = p;
        }
      }
    }
    if (most == null) {
      return;
    }
    Point at = frame.at(moved(look, most, factor));
    double toward = at.x() < width / 2 ? 5 : -5;
    Point elbow = new Point(at.x() + toward, HEAD + 2.5);
    sketch.add(
        Leaders.dotted(
            at, elbow, Markup.escape("largest " + amounts.movement(shape.largest())), POINTS));
  }

  private static void key(Sketch sketch, double factor) {
    double base = 3.5;
    sketch.line(new Point(2, base - 1), new Point(12, base - 1), BEFORE);
    sketch.text(new Point(13.5, base), RichText.plain("before"), POINTS, Align.LEFT, 0);
    sketch.line(new Point(30, base - 1), new Point(40, base - 1), AFTER);
    String words = "after, × " + Writing.number(factor, 3);
    sketch.text(new Point(41.5, base), RichText.plain(words), POINTS, Align.LEFT, 0);
  }

  /** Puts real places into a frame on paper, at one scale both ways. */
  private record Frame(double left, double foot, double scale, double minX, double minZ) {

    static Frame around(List<double[]> places, Bounds area) {
      double minX = places.stream().mapToDouble(p -> p[0]).min().orElse(0);
      double maxX = places.stream().mapToDouble(p -> p[0]).max().orElse(1);
      double minZ = places.stream().mapToDouble(p -> p[1]).min().orElse(0);
      double maxZ = places.stream().mapToDouble(p -> p[1]).max().orElse(1);
      double scale =
          Math.max(Math.max((maxX - minX) / area.width(), (maxZ - minZ) / area.height()), 1e-6);
      double left = area.left() + (area.width() - (maxX - minX) / scale) / 2;
      return new Frame(left, area.bottom(), scale, minX, minZ);
    }

    Point at(double[] p) {
      return new Point(left + (p[0] - minX) / scale, foot - (p[1] - minZ) / scale);
    }
  }
}
