package org.stoutwork.report.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.stoutwork.quantity.Measure;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.result.Diagram;
import org.stoutwork.result.Diagram.Station;

/** Moment and shear along a part, each with its values at the ends and at its peaks. */
public final class DiagramDrawing {

  private static final double SIDE = 12;
  private static final double LETTERING = 10;
  private static final double NOTHING = 1e-9;

  private final Diagram diagram;
  private final Amounts amounts;
  private final TextMeasure measure;
  private final double width;
  private final double height;

  /**
   * @param diagram to draw
   * @param amounts for the values
   * @param measure of the type
   * @param width of each drawing, mm
   * @param height of each drawing, mm
   */
  public DiagramDrawing(
      Diagram diagram, Amounts amounts, TextMeasure measure, double width, double height) {
    this.diagram = diagram;
    this.amounts = amounts;
    this.measure = measure;
    this.width = width;
    this.height = height;
  }

  /** The moment, drawn on the side that it pulls. */
  public Drawing moment() {
    return draw(Station::moment, Unit.N_MM, 1);
  }

  /** The shear force, positive upward. */
  public Drawing shear() {
    return draw(Station::shear, Unit.N, -1);
  }

  /** The largest moment in words. */
  public String momentPeak() {
    return peak(Station::moment, Unit.N_MM);
  }

  /** The largest shear force in words. */
  public String shearPeak() {
    return peak(Station::shear, Unit.N);
  }

  private String peak(ToDoubleFunction<Station> value, Unit unit) {
    Station most = extreme(value, v -> Math.abs(v));
    return "largest %s at %s"
        .formatted(text(value.applyAsDouble(most), unit), amounts.length(most.x()));
  }

  private interface Rank {
    double of(double value);
  }

  private Station extreme(ToDoubleFunction<Station> value, Rank rank) {
    Station best = diagram.stations().get(0);
    for (Station s : diagram.stations()) {
      if (rank.of(value.applyAsDouble(s)) > rank.of(value.applyAsDouble(best)) + NOTHING) {
        best = s;
      }
    }
    return best;
  }

  private Drawing draw(ToDoubleFunction<Station> value, Unit unit, int down) {
    double high = down * value.applyAsDouble(extreme(value, v -> -down * v));
    double low = down * value.applyAsDouble(extreme(value, v -> down * v));
    double above = Math.max(0, -high);
    double below = Math.max(0, low);
    double scale = Math.max(above + below, NOTHING) / (height - 2 * LETTERING);
    double axis = LETTERING + (above + below <= NOTHING ? height / 4 : above / scale);
    List<Point> curve = new ArrayList<>();
    for (Station s : diagram.stations()) {
      curve.add(new Point(x(s), axis + down * value.applyAsDouble(s) / scale));
    }
    Sketch sketch = new Sketch();
    body(sketch, curve, axis);
    DiagramLabels labels = new DiagramLabels(curve, axis, measure, new Bounds(0, 0, width, height));
    Set<Station> named = new LinkedHashSet<>();
    named.add(extreme(value, v -> Math.abs(v)));
    named.add(extreme(value, v -> v));
    named.add(extreme(value, v -> -v));
    named.add(diagram.stations().get(0));
    named.add(diagram.stations().get(diagram.stations().size() - 1));
    for (Station s : named) {
      double v = down * value.applyAsDouble(s);
      labels.put(new Point(x(s), axis + v / scale), v > 0, text(value.applyAsDouble(s), unit));
    }
    sketch.add(labels.marks());
    return sketch.drawing(width, height).requireInside(measure);
  }

  private double x(Station s) {
    return SIDE + (width - 2 * SIDE) * s.x() / Math.max(diagram.length(), NOTHING);
  }

  private void body(Sketch sketch, List<Point> curve, double axis) {
    Point start = new Point(curve.get(0).x(), axis);
    Point end = new Point(curve.get(curve.size() - 1).x(), axis);
    List<Point> area = new ArrayList<>(curve);
    area.add(0, start);
    area.add(end);
    boolean flat = Bounds.around(area).height() < 0.2;
    if (!flat) {
      sketch.area(area, new Fill.Hatch(90, 1.4, Stroke.of(0.13, Ink.MID)));
      sketch.path(area, Stroke.of(0.4, Ink.ACCENT));
    }
    sketch.line(start.plus(-1.5, 0), end.plus(1.5, 0), Stroke.MEDIUM);
  }

  private String text(double value, Unit unit) {
    return Math.abs(value) < 0.5 && unit != Unit.ONE ? "0" : amounts.of(new Measure(value, unit));
  }
}
