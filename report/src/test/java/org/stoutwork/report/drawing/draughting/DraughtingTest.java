package org.stoutwork.report.drawing.draughting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.TextMeasure;

class DraughtingTest {

  private static final TextMeasure MEASURE = new EmMeasure();

  private static Mark.Label label(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Property
  void a_fitting_view_keeps_the_real_thing_in_its_area(
      @ForAll @DoubleRange(min = -300, max = 300) double x,
      @ForAll @DoubleRange(min = 40, max = 9000) double length,
      @ForAll @DoubleRange(min = 30, max = 3000) double height) {
    Bounds area = new Bounds(7, 11, 121, 83);
    View view = View.fitting(new View.RealBox(x, -20, x + length, height), area);
    Bounds drawn = Bounds.around(List.of(view.at(x, -20), view.at(x + length, height)));
    assertTrue(area.holds(drawn, 1e-6), drawn.toString());
    assertEquals(length / view.denominator(), drawn.width(), 1e-9);
  }

  @Test
  void height_runs_up_the_paper() {
    View view = new View(new Point(10, 90), 20);
    assertEquals(new Point(10 + 33.5, 90 - 43), view.at(670, 860));
    assertEquals("1\u00a0:\u00a020", view.scale());
  }

  @Test
  void a_dimension_figure_stands_over_the_middle_of_its_line() {
    Dimensions dimensions = new Dimensions(MEASURE, 9);
    Mark.Label figure =
        label(dimensions.horizontal(new Point(12, 40), new Point(52, 35), 60, "1600"));
    assertEquals(32, figure.at().x(), 1e-9);
    assertTrue(figure.at().y() < 60);
    assertEquals(Align.CENTRE, figure.align());
    assertEquals(0, figure.degrees(), 1e-9);
  }

  @Test
  void an_upright_dimension_reads_from_the_right() {
    Dimensions dimensions = new Dimensions(MEASURE, 9);
    for (List<Mark> marks :
        List.of(
            dimensions.vertical(new Point(12, 70), new Point(14, 20), 5, "870"),
            dimensions.vertical(new Point(14, 20), new Point(12, 70), 5, "870"))) {
      Mark.Label figure = label(marks);
      assertEquals(90, figure.degrees(), 1e-9);
      assertTrue(figure.at().x() < 5);
    }
  }

  @Test
  void a_figure_too_long_for_its_dimension_stands_beside_it() {
    Dimensions dimensions = new Dimensions(MEASURE, 9);
    Mark.Label figure =
        label(dimensions.horizontal(new Point(12, 40), new Point(16, 40), 60, "90"));
    assertEquals(Align.LEFT, figure.align());
    assertTrue(Extent.of(figure, MEASURE).left() > 16);
  }

  @Test
  void an_aligned_dimension_stands_off_to_the_left_of_its_way() {
    Dimensions dimensions = new Dimensions(MEASURE, 9);
    List<Mark> marks = dimensions.aligned(new Point(10, 50), new Point(50, 20), 8, "50");
    Mark.Label figure = label(marks);
    Point middle = new Point(30, 35);
    assertEquals(8 + 0.9, middle.to(figure.at()), 1e-6);
    assertTrue(figure.at().y() < middle.y());
  }

  @Test
  void a_load_arrow_touches_its_point_and_says_its_value_at_the_tail() {
    Point tip = new Point(33, 44);
    List<Mark> marks = Loads.force(tip, -90, 12, "200 N", 9);
    Mark.Polygon head = (Mark.Polygon) marks.get(1);
    assertEquals(tip, head.points().get(0));
    Mark.Label value = label(marks);
    assertTrue(Extent.of(value, MEASURE).bottom() < tip.y() - 12 + 1);
    assertThrows(IllegalArgumentException.class, () -> Loads.force(tip, -90, 2, "200 N", 9));
  }

  @Test
  void a_spread_load_has_an_arrow_at_either_end() {
    List<Mark> marks = Loads.spread(new Point(4, 30), new Point(41, 30), 9, "1.2 kN/m", 9);
    List<Point> tips =
        marks.stream()
            .filter(Mark.Polygon.class::isInstance)
            .map(m -> ((Mark.Polygon) m).points().get(0))
            .toList();
    assertEquals(new Point(4, 30), tips.get(0));
    assertEquals(new Point(41, 30), tips.get(tips.size() - 1));
  }

  @Test
  void a_scale_bar_is_as_long_as_it_says() {
    View view = new View(new Point(0, 0), 25);
    List<Mark> marks = ScaleBar.at(new Point(3, 5), view, 100, 4, "mm", 8);
    double right =
        marks.stream()
            .filter(Mark.Polygon.class::isInstance)
            .flatMap(m -> ((Mark.Polygon) m).points().stream())
            .mapToDouble(Point::x)
            .max()
            .orElseThrow();
    assertEquals(3 + 400.0 / 25, right, 1e-9);
    assertEquals("400\u00a0mm", ((Mark.Label) marks.get(marks.size() - 1)).text().characters());
  }

  @Test
  void a_leader_puts_its_note_beyond_the_elbow() {
    Mark.Label right = label(Leaders.pointed(new Point(20, 30), new Point(26, 22), "leg", 9));
    Mark.Label left = label(Leaders.dotted(new Point(20, 30), new Point(14, 22), "leg", 9));
    assertTrue(right.at().x() > 26);
    assertTrue(Extent.of(left, MEASURE).right() < 14);
  }
}
