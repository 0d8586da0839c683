package org.stoutwork.report.drawing.draughting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.stoutwork.report.drawing.TextMeasure;

class DimensionRowsTest {

  private static final TextMeasure MEASURE = new EmMeasure();

  private static DimensionRows rows(boolean level) {
    return new DimensionRows(MEASURE, level, 40, 1);
  }

  private static DimensionRows add(
      DimensionRows rows, boolean level, double from, double to, String figure, int row) {
    Point a = level ? new Point(from, 7) : new Point(7, from);
    Point b = level ? new Point(to, 7) : new Point(7, to);
    return rows.add(a, b, figure, row);
  }

  private static List<Bounds> figures(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Label.class::isInstance)
        .map(m -> Extent.of(m, MEASURE))
        .toList();
  }

  /** Lines that run from the view to the rows, which figures must not stand on. */
  private static List<Bounds> extensions(List<Mark> marks, boolean level) {
    return marks.stream()
        .filter(Mark.Path.class::isInstance)
        .map(m -> Bounds.around(((Mark.Path) m).points()))
        .filter(b -> (level ? b.width() : b.height()) < 1e-9)
        .toList();
  }

  @Property
  void no_figure_stands_on_another_or_on_an_extension_line(
      @ForAll boolean level,
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 61) Integer> from,
      @ForAll @Size(min = 7, max = 7) List<@IntRange(min = 1, max = 47) Integer> lengths) {
    DimensionRows rows = rows(level);
    for (int i = 0; i < from.size(); i++) {
      int start = from.get(i);
      int length = lengths.get(i);
      add(rows, level, start, start + length, Integer.toString(3 * length), i % 3 == 2 ? 1 : 0);
    }
    List<Mark> marks = rows.marks();
    List<Bounds> figures = figures(marks);
    assertEquals(from.size(), figures.size());
    for (int i = 0; i < figures.size(); i++) {
      for (Bounds other : figures.subList(i + 1, figures.size())) {
        assertFalse(figures.get(i).overlaps(other, 0.01), figures.get(i) + " and " + other);
      }
      for (Bounds line : extensions(marks, level)) {
        assertFalse(figures.get(i).overlaps(line.grown(1e-6), 0), figures.get(i) + " on " + line);
      }
    }
  }

  @Test
  void a_figure_without_room_goes_beyond_all_lines_and_a_line_leads_to_it() {
    DimensionRows rows = rows(true);
    add(rows, true, 20, 23, "36.5", 0);
    add(rows, true, 23, 24.4, "17", 0);
    add(rows, true, 20, 31, "90", 1);
    List<Bounds> figures = figures(rows.marks());
    assertTrue(figures.get(0).right() < 20, figures.toString());
    assertTrue(figures.get(1).left() > 31 || figures.get(1).left() > 24.4, figures.toString());
    assertTrue(figures.get(2).left() > 20 && figures.get(2).right() < 31, figures.toString());
  }
}
