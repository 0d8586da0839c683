package org.stoutwork.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DrawingTest {

  private static final TextMeasure MEASURE = new EmMeasure();

  @Test
  void lettering_over_the_edge_is_refused() {
    Drawing drawing = new Sketch().text(new Point(28, 8), "abcdef", Align.LEFT).drawing(31, 12);
    IllegalStateException fault =
        assertThrows(IllegalStateException.class, () -> drawing.requireInside(MEASURE));
    assertTrue(fault.getMessage().startsWith("a mark leaves the frame of 31.0 mm by 12.0 mm"));
  }

  @Test
  void a_fitted_drawing_holds_everything_with_its_margin() {
    Sketch sketch =
        new Sketch()
            .line(new Point(-13, 4), new Point(22, -17), Stroke.THICK)
            .text(new Point(30, 3), RichText.of("turned"), 9, Align.RIGHT, 70);
    Drawing drawing = sketch.fitted(MEASURE, 2);
    Bounds reach = Extent.of(drawing.marks(), MEASURE);
    assertEquals(2, reach.left(), 1e-9);
    assertEquals(2, reach.top(), 1e-9);
    assertEquals(drawing.width() - 2, reach.right(), 1e-9);
    assertEquals(drawing.height() - 2, reach.bottom(), 1e-9);
  }

  @Test
  void lettering_turned_by_a_right_angle_runs_upward() {
    Mark label =
        new Mark.Label(new Point(50, 40), RichText.of("abcd"), 10, Align.LEFT, 90, Ink.BLACK);
    Bounds reach = Extent.of(label, MEASURE);
    double em = 10 * TextMeasure.MM_PER_POINT;
    assertEquals(40, reach.bottom(), 1e-9);
    assertEquals(40 - 2 * em, reach.top(), 1e-9);
    assertEquals(50 - TextMeasure.ASCENT * em, reach.left(), 1e-9);
    assertEquals(50 + TextMeasure.DESCENT * em, reach.right(), 1e-9);
  }

  @Test
  void backed_lettering_lies_over_a_white_ground_that_holds_it() {
    List<Mark> marks =
        new Sketch().backedText(new Point(30, 12), "leg", Align.CENTRE, MEASURE).marks();
    Mark.Polygon ground = (Mark.Polygon) marks.get(0);
    assertEquals(Fill.of(Ink.WHITE), ground.fill());
    assertTrue(Extent.of(ground, MEASURE).holds(Extent.of(marks.get(1), MEASURE), 0));
  }

  @Test
  void inks_that_print_text_reach_seven_to_one_and_lines_three_to_one() {
    for (Ink ink : List.of(Ink.BLACK, Ink.DARK, Ink.ACCENT)) {
      assertTrue(ink.contrast(Ink.WHITE) >= 7, ink + " " + ink.contrast(Ink.WHITE));
    }
    assertTrue(Ink.MID.contrast(Ink.WHITE) >= 3);
    assertEquals(21, Ink.BLACK.contrast(Ink.WHITE), 1e-9);
  }

  @Test
  void shapes_that_cannot_be_drawn_are_refused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Mark.Path(List.of(new Point(1, 2)), Stroke.THIN));
    assertThrows(IllegalArgumentException.class, () -> new Point(Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> Stroke.of(0.01, Ink.BLACK));
    assertThrows(IllegalArgumentException.class, () -> Fill.hatch(30, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new Drawing(0, 12, List.of()));
  }

  @Property
  void hatching_of_a_triangle_covers_its_area_and_stays_inside(
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = 12, max = 40) double x,
      @ForAll @DoubleRange(min = 14, max = 50) double y) {
    List<Point> triangle = List.of(new Point(3, 2), new Point(x, 7), new Point(9, y));
    double area = Math.abs((triangle.get(1).x() - 3) * (y - 2) - (9 - 3) * (7.0 - 2)) / 2;
    Fill.Hatch hatch = new Fill.Hatch(degrees, 0.3, Stroke.THIN);
    double covered = 0;
    Bounds frame = Bounds.around(triangle);
    for (List<Point> line : HatchLines.within(triangle, hatch)) {
      covered += line.get(0).to(line.get(1)) * hatch.spacing();
      assertTrue(frame.holds(Bounds.around(line), 1e-6));
      double direction = line.get(0).angleTo(line.get(1)) - degrees;
      assertTrue(
          line.get(0).to(line.get(1)) < 1e-6
              || Math.abs(Math.sin(Math.toRadians(direction))) < 1e-6);
    }
    double perimeter =
        triangle.get(0).to(triangle.get(1))
            + triangle.get(1).to(triangle.get(2))
            + triangle.get(2).to(triangle.get(0));
    assertEquals(area, covered, perimeter * hatch.spacing());
  }

  @Test
  void svg_text_is_exact_and_repeats() {
    Drawing drawing =
        new Sketch()
            .line(new Point(1, 2.5), new Point(8, 2.5), Stroke.THIN.dashed(Dash.DASHED))
            .area(List.of(new Point(1, 1), new Point(4, 1), new Point(4, 3)), Fill.of(Ink.ACCENT))
            .text(new Point(5, 9), "σ_m < 1", Align.CENTRE)
            .drawing(12.25, 10);
    String expected =
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="12.25mm" height="10mm" viewBox="0 0 12.25 10" font-family="sans-serif">
        <polyline points="1,2.5 8,2.5" fill="none" stroke="#000000" stroke-width="0.18" stroke-dasharray="1.44 0.9"/>
        <polygon points="1,1 4,1 4,3" fill="#0f4c5c"/>
        <text x="5" y="9" font-size="3.175" text-anchor="middle" fill="#000000"><tspan>σ</tspan><tspan font-size="2.286" dy="0.54">m</tspan><tspan dy="-0.54"> &lt; 1</tspan></text>
        </svg>
        """;
    assertEquals(expected, SvgWriter.write(drawing));
    assertEquals(SvgWriter.write(drawing), SvgWriter.write(drawing));
    assertFalse(SvgWriter.write(drawing).contains("NaN"));
  }
}
