package org.stoutwork.report.sheet.math;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Level;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

class FormulaSetterTest {

  private static final TextMeasure MEASURE = new EmMeasure();
  private static final FormulaSetter SETTER = new FormulaSetter(MEASURE, 10);

  private static Formula formula(String text) {
    return Formula.define("R")
        .meaning("result")
        .unit(Unit.ONE)
        .where("a", "one", Unit.MM)
        .where("b_{ef}", "two", Unit.MM)
        .fitted(text)
        .source(Source.derived("trial"));
  }

  private static String text(List<MathBox> rows) {
    return rows.stream()
        .flatMap(row -> row.marks().stream())
        .filter(Mark.Label.class::isInstance)
        .map(mark -> ((Mark.Label) mark).text().characters())
        .collect(Collectors.joining(" "));
  }

  private static List<MathBox> symbols(String formula) {
    return SETTER.inSymbols(formula(formula), 150).orElseThrow();
  }

  private static Mark.Label label(MathBox box, String characters) {
    return box.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .filter(l -> l.text().characters().equals(characters))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_quotient_stands_over_and_under_a_bar() {
    MathBox box = symbols("a/b_{ef}").get(0);
    Mark.Polygon bar =
        box.marks().stream()
            .filter(Mark.Polygon.class::isInstance)
            .map(Mark.Polygon.class::cast)
            .findFirst()
            .orElseThrow();
    double level = bar.points().get(0).y();
    assertTrue(Extent.of(label(box, "a"), MEASURE).bottom() < level);
    assertTrue(Extent.of(label(box, "bef"), MEASURE).top() > level - 0.2);
  }

  @Test
  void the_parts_of_a_quotient_lose_their_brackets() {
    assertEquals("= a + bef a · 2", text(symbols("(a + b_{ef})/(a*2)")));
  }

  @Test
  void a_sum_within_a_product_keeps_its_brackets() {
    assertEquals("= a · ( a − bef )", text(symbols("a*(a - b_{ef})")));
  }

  @Test
  void a_difference_taken_away_keeps_its_brackets() {
    assertEquals("= a − ( bef − 3 )", text(symbols("a - (b_{ef} - 3)")));
  }

  @Test
  void symbols_slope_and_indices_stand_upright() {
    MathBox box = symbols("a*b_{ef}").get(0);
    Mark.Label symbol = label(box, "bef");
    assertEquals(Face.ITALIC, symbol.text().runs().get(0).face());
    assertEquals(Face.REGULAR, symbol.text().runs().get(1).face());
    assertEquals(Level.SUB, symbol.text().runs().get(1).level());
  }

  @Test
  void an_exponent_is_smaller_and_higher() {
    MathBox box = symbols("a^2 + b_{ef}").get(0);
    Mark.Label two = label(box, "2");
    assertTrue(two.at().y() < 0);
    assertTrue(two.points() < 10);
  }

  @Test
  void a_number_with_its_unit_is_bracketed_before_it_is_raised() {
    RecordingPad pad = Pad.recording();
    pad.take(formula("a^2/b_{ef}"), 92, 38);
    Line.Calculated line = (Line.Calculated) pad.working().lines().get(0);
    assertEquals(
        "= ( 92\u00a0mm ) 2 38\u00a0mm", text(SETTER.withNumbers(line, 150).orElseThrow()));
  }

  @Test
  void a_negative_number_is_bracketed_within_a_sum() {
    RecordingPad pad = Pad.recording();
    pad.take(formula("a + b_{ef}"), 92, -38);
    Line.Calculated line = (Line.Calculated) pad.working().lines().get(0);
    assertEquals(
        "= 92\u00a0mm + ( −38\u00a0mm )", text(SETTER.withNumbers(line, 150).orElseThrow()));
  }

  @Test
  void a_root_covers_what_it_is_drawn_over() {
    MathBox box = symbols("sqrt(a/b_{ef})").get(0);
    Mark.Path hook =
        box.marks().stream()
            .filter(Mark.Path.class::isInstance)
            .map(Mark.Path.class::cast)
            .findFirst()
            .orElseThrow();
    assertTrue(Extent.of(hook, MEASURE).right() > Extent.of(label(box, "bef"), MEASURE).right());
    assertTrue(Extent.of(hook, MEASURE).top() < label(box, "a").at().y());
  }

  @Test
  void a_long_sum_breaks_before_its_signs_and_fits() {
    List<MathBox> rows =
        SETTER.inSymbols(formula("a + b_{ef} + a*b_{ef} + a^2 + b_{ef}^3 + a"), 30).orElseThrow();
    assertTrue(rows.size() > 1);
    rows.forEach(row -> assertTrue(row.width() <= 30));
    assertTrue(
        text(rows.subList(1, 2)).startsWith("+") || text(rows.subList(1, 2)).startsWith("·"));
  }

  @Test
  void a_part_too_wide_for_the_line_is_left_to_running_text() {
    assertTrue(
        SETTER.inSymbols(formula("sqrt(a + b_{ef} + a*b_{ef} + a^2 + b_{ef})"), 20).isEmpty());
  }

  @Test
  void functions_stand_upright_with_their_inputs_in_brackets() {
    assertEquals("= min ( a ;\u00a0 bef )", text(symbols("min(a, b_{ef})")));
  }

  @Test
  void ink_stays_within_the_box() {
    for (String text :
        List.of("a^2/b_{ef}", "sqrt((a/b_{ef})^2 + (b_{ef}/a)^2)", "a*(b_{ef} - a)^(2/3)")) {
      for (MathBox box : symbols(text)) {
        var reach = Extent.of(box.marks(), MEASURE);
        assertTrue(reach.left() >= -0.2 && reach.right() <= box.width() + 0.2, text);
        assertTrue(reach.top() >= -box.ascent() - 0.6, text + reach + box.ascent());
        assertTrue(reach.bottom() <= box.descent() + 0.6, text + reach + box.descent());
      }
    }
  }
}
