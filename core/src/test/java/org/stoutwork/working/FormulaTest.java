package org.stoutwork.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;

class FormulaTest {

  private static final Source STATICS = Source.derived("statics");

  private static final Formula BENDING =
      Formula.define("σ_m")
          .meaning("bending stress at the outer fibre")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("b", "width", Unit.MM)
          .where("h", "depth", Unit.MM)
          .as("6*M/(b*h^2)")
          .source(STATICS);

  @Test
  void the_number_in_the_sheet_is_the_number_computed() {
    assertEquals(6 * 412000.0 / (40 * 90.0 * 90.0), BENDING.value(412000, 40, 90));
    assertEquals("6 · M / (b · h²)", BENDING.inSymbols());
    assertEquals(
        "6 · 412000\u00a0N·mm / (40\u00a0mm · (90\u00a0mm)²)", BENDING.withNumbers(412000, 40, 90));
  }

  @Test
  void a_recording_pad_keeps_what_a_blank_pad_only_calculates() {
    RecordingPad pad = Pad.recording();
    double kept = pad.take(BENDING, 7, 3, 2);
    assertEquals(Pad.blank().take(BENDING, 7, 3, 2), kept);
    assertEquals(kept, pad.working().result().orElseThrow());
    assertEquals(Mark.DERIVED, pad.working().weakestMark());
  }

  @Test
  void a_forgotten_square_is_refused_when_the_formula_is_built() {
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> stress("6*M/(b*h)"));
    assertEquals("formula \"6*M/(b*h)\": its value is not in MPa", fault.getMessage());
  }

  @Test
  void a_sum_of_unlike_things_is_refused() {
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> stress("6*M/(b*h^2) + b/h"));
    assertTrue(fault.getMessage().contains("two parts that are added are not in one unit"));
  }

  @Test
  void an_undeclared_symbol_and_an_unused_one_are_named() {
    assertEquals(
        "formula \"6*M/(b*d^2)\", at character 8: symbol \"d\" is not declared",
        assertThrows(IllegalArgumentException.class, () -> stress("6*M/(b*d^2)")).getMessage());
    assertEquals(
        "formula \"M/b^3\" declares h but does not use it",
        assertThrows(IllegalArgumentException.class, () -> stress("M/b^3")).getMessage());
  }

  private static Formula stress(String text) {
    return Formula.define("σ")
        .unit(Unit.MPA)
        .where("M", "moment", Unit.N_MM)
        .where("b", "width", Unit.MM)
        .where("h", "depth", Unit.MM)
        .as(text)
        .source(STATICS);
  }

  @Test
  void precedence_signs_and_functions_are_those_of_ordinary_algebra() {
    Formula f =
        Formula.define("y")
            .where("a", "", Unit.ONE)
            .where("k_{c,90}", "", Unit.ONE)
            .as("-a^2 + 2*(a - k_{c,90})/3 + sqrt(k_{c,90}) - min(a, 1.5e1, k_{c,90})^3")
            .source(STATICS);
    double a = 1.7;
    double k = 2.9;
    assertEquals(
        -a * a + 2 * (a - k) / 3 + Math.sqrt(k) - Math.pow(Math.min(a, k), 3),
        f.value(a, k),
        1e-14);
    assertEquals(
        "−a² + 2 · (a − k_{c,90}) / 3 + √(k_{c,90}) − min(a; 1.5e1; k_{c,90})³", f.inSymbols());
  }

  @Property
  void subtraction_and_division_lean_to_the_left(
      @ForAll @DoubleRange(min = 0.1, max = 9) double a,
      @ForAll @DoubleRange(min = 0.1, max = 9) double b,
      @ForAll @DoubleRange(min = 0.1, max = 9) double c) {
    Formula f =
        Formula.define("y")
            .where("a", "", Unit.ONE)
            .where("b", "", Unit.ONE)
            .where("c", "", Unit.ONE)
            .as("a - b - c + a/b/c + a - (b - c) + a/(b/c)")
            .source(STATICS);
    assertEquals(a - b - c + a / b / c + a - (b - c) + a / (b / c), f.value(a, b, c), 1e-12);
    assertEquals("a − b − c + a / b / c + a − (b − c) + a / (b / c)", f.inSymbols());
  }
}
