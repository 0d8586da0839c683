package org.stoutwork.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class UtilisationTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Verdict verdict(double low, double mean, double high) {
    return Verdict.of(Utilisation.printable(new StiffnessRange(low, mean, high)));
  }

  @Test
  void what_has_no_limit_or_is_no_number_is_printed_as_the_most() {
    assertEquals(Utilisation.MOST, Utilisation.printable(NONE));
    assertEquals(Utilisation.MOST, Utilisation.printable(Double.NaN));
    assertEquals(Utilisation.MOST, Utilisation.printable(Double.MAX_VALUE));
    assertEquals(0.37, Utilisation.printable(0.37));
  }

  @Test
  void a_frame_that_is_loose_at_the_softest_alone_is_marginal() {
    assertEquals(Verdict.MARGINAL, verdict(NONE, 0.4, 0.3));
  }

  @Test
  void one_that_fails_at_the_mean_too_is_inadequate() {
    assertEquals(Verdict.INADEQUATE, verdict(NONE, 1.2, 0.3));
    assertEquals(Verdict.INADEQUATE, verdict(NONE, NONE, NONE));
  }

  @Test
  void a_finite_range_is_marginal_where_its_favourable_end_holds() {
    assertEquals(Verdict.MARGINAL, verdict(1.7, 1.2, 0.8));
    assertEquals(Verdict.INADEQUATE, verdict(1.7, 1.2, 1.1));
  }

  @Property
  void a_printed_figure_has_the_verdict_of_the_figure(
      @ForAll @DoubleRange(min = 0, max = 1.2) @Scale(12) double anywhere,
      @ForAll @DoubleRange(min = -1e-3, max = 1e-3) @Scale(12) double off) {
    for (double value :
        new double[] {anywhere, 0.9 + off, 1 + off, 0.9 + off / 1e6, 1 + off / 1e6}) {
      double printed = Double.parseDouble(Utilisation.shown(value));
      assertEquals(Verdict.of(value), Verdict.of(printed), "of " + value);
      assertEquals(value, printed, 0.005 + 1e-12);
    }
  }

  @Test
  void figures_are_rounded_alike_everywhere() {
    assertEquals("0.89", Utilisation.shown(0.8949));
    assertEquals("0.8999", Utilisation.shown(0.8999));
    assertEquals("0.896", Utilisation.shown(0.896));
    assertEquals("0.8999", Utilisation.shown(0.899999999));
    assertEquals("0.90", Utilisation.shown(0.9));
    assertEquals("1.00", Utilisation.shown(1));
    assertEquals("1.0001", Utilisation.shown(1.0000001));
    assertEquals("1.003", Utilisation.shown(1.003));
    assertEquals("2.37", Utilisation.shown(2.371));
    assertEquals("23.7", Utilisation.shown(23.71));
    assertEquals("237", Utilisation.shown(237.1));
    assertEquals("over\u00a0999", Utilisation.shown(999.7));
    assertEquals("over\u00a0999", Utilisation.shown(Utilisation.MOST));
  }

  @Test
  void a_least_measure_is_needed_and_a_part_of_a_capacity_is_used() {
    assertEquals("36 mm, has 32 mm", Wording.NEEDS.after("36 mm", "32 mm"));
    assertEquals("needs", Wording.NEEDS.verb());
    assertEquals("375 N of 211 N", Wording.USES.after("375 N", "211 N"));
    assertEquals("uses", Wording.USES.verb());
    assertEquals("0.37 of 0.8 of the strength", Wording.SHARE.after("0.37", "0.8"));
  }

  @Test
  void the_note_says_why_there_is_no_limit() {
    StiffnessRange loose = new StiffnessRange(Utilisation.MOST, 0.4, 0.3);
    assertEquals(Utilisation.LOOSE_AT_SOFTEST, Utilisation.noted("", loose));
    StiffnessRange bare = Utilisation.printable(new StiffnessRange(NONE, NONE, NONE));
    assertTrue(Utilisation.noted("Besides.", bare).endsWith(Utilisation.NOTHING_CARRIES));
    assertEquals("Besides.", Utilisation.noted("Besides.", new StiffnessRange(2, 1, 0.5)));
  }
}
