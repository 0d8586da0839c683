package org.stoutwork.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  @Test
  void the_note_says_why_there_is_no_limit() {
    StiffnessRange loose = new StiffnessRange(Utilisation.MOST, 0.4, 0.3);
    assertEquals(Utilisation.LOOSE_AT_SOFTEST, Utilisation.noted("", loose));
    StiffnessRange bare = Utilisation.printable(new StiffnessRange(NONE, NONE, NONE));
    assertTrue(Utilisation.noted("Besides.", bare).endsWith(Utilisation.NOTHING_CARRIES));
    assertEquals("Besides.", Utilisation.noted("Besides.", new StiffnessRange(2, 1, 0.5)));
  }
}
