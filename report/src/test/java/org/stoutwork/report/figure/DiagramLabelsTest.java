package org.stoutwork.report.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;

class DiagramLabelsTest {

  private static final EmMeasure MEASURE = new EmMeasure();
  private static final Bounds FRAME = new Bounds(0, 0, 80, 40);
  private static final double AXIS = 19;

  private static List<Bounds> labels(List<Point> curve) {
    DiagramLabels labels = new DiagramLabels(curve, AXIS, MEASURE, FRAME);
    curve.forEach(p -> labels.put(p, p.y() > AXIS, Integer.toString((int) (41 * (p.y() - AXIS)))));
    return labels.marks().stream().map((Mark m) -> Extent.of(m, MEASURE)).toList();
  }

  private static double level(Point a, Point b, double x) {
    return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
  }

  @Property
  void no_value_stands_on_the_diagram_or_on_another(
      @ForAll @Size(min = 4, max = 9) List<@IntRange(min = -9, max = 11) Integer> values) {
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      curve.add(new Point(12 + 56.0 * i / (values.size() - 1), AXIS + values.get(i)));
    }
    List<Bounds> labels = labels(curve);
    assertFalse(labels.isEmpty());
    for (int i = 0; i < labels.size(); i++) {
      Bounds label = labels.get(i);
      labels.subList(i + 1, labels.size()).forEach(b -> assertFalse(b.overlaps(label, 0)));
      for (int k = 0; k + 1 < curve.size(); k++) {
        for (double x = curve.get(k).x(); x < curve.get(k + 1).x(); x += 0.37) {
          double y = level(curve.get(k), curve.get(k + 1), x);
          boolean inside = x > label.left() && x < label.right();
          boolean over = label.top() < Math.max(AXIS, y) && label.bottom() > Math.min(AXIS, y);
          assertFalse(inside && over, label + " at " + x + " in " + curve);
        }
      }
    }
  }

  @Test
  void a_value_at_an_end_beside_a_deep_field_goes_where_it_is_clear() {
    List<Point> curve =
        List.of(new Point(12, 21), new Point(17, 33), new Point(52, 20), new Point(68, 18));
    List<Bounds> labels = labels(curve);
    assertEquals(4, labels.size());
    assertTrue(labels.get(0).bottom() < AXIS || labels.get(0).right() < 12 + 5, labels.toString());
  }
}
