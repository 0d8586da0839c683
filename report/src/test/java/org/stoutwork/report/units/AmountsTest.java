package org.stoutwork.report.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Measure;
import org.stoutwork.quantity.Unit;

class AmountsTest {

  private final Amounts si = new Amounts(UnitSystem.SI);
  private final Amounts inches = new Amounts(UnitSystem.INCH_POUND);

  @Test
  void lengths_in_whole_thirty_seconds_read_as_fractions() {
    assertEquals("62\u00a015/16\u00a0in", inches.length(62.9375 * 25.4));
    assertEquals("5/32\u00a0in", inches.length(5 * 25.4 / 32));
    assertEquals("34\u00a0in", inches.length(34 * 25.4));
  }

  @Test
  void other_lengths_read_as_decimals() {
    assertEquals("62.99\u00a0in", inches.length(1600));
    assertEquals("1600\u00a0mm", si.length(1600));
    assertEquals("37.5\u00a0mm", si.length(37.5));
  }

  @Test
  void sizes_carry_their_unit_once() {
    assertEquals("38\u00a0×\u00a092\u00a0mm", si.size(38, 92));
  }

  @Test
  void large_moments_read_in_newton_metres_and_small_ones_as_they_are() {
    assertEquals("342\u00a0N·m", si.of(new Measure(342_000, Unit.N_MM)));
    assertEquals("820\u00a0N·mm", si.of(new Measure(820, Unit.N_MM)));
    assertEquals("252\u00a0lbf·ft", inches.of(new Measure(342_000, Unit.N_MM)));
  }

  @Test
  void a_pair_has_one_unit() {
    assertEquals(
        "0.8, 342\u00a0N·m", si.pair(new Measure(800, Unit.N_MM), new Measure(342_000, Unit.N_MM)));
  }

  @Test
  void numbers_in_a_sentence_turn_with_their_unit_and_sizes_turn_whole() {
    assertEquals(
        "tenon 2.91 × 0.67 × 2.52\u00a0in, 33.5\u00a0in from the left end, and 33.7\u00a0lbf sideways",
        inches.inWords("tenon 74 × 17 × 64 mm, 850 mm from the left end, and 150 N sideways"));
    assertEquals("12 N/mm and M10", inches.inWords("12 N/mm and M10"));
    assertEquals("850 mm from the left end", si.inWords("850 mm from the left end"));
  }

  @Test
  void small_lengths_in_a_sentence_keep_a_digit_that_says_something() {
    assertEquals("thicker than 0.008\u00a0in", inches.inWords("thicker than 0.2 mm"));
  }

  @Test
  void a_result_in_other_units_is_said_besides_only_where_there_are_others() {
    assertEquals("302.1\u00a0lbf", inches.also(new Measure(1344, Unit.N)));
    assertEquals("", inches.also(new Measure(0.81, Unit.ONE)));
    assertEquals("", si.also(new Measure(1344, Unit.N)));
  }

  @Test
  void a_modulus_in_psi_claims_four_digits_and_no_more() {
    assertEquals("1595000\u00a0psi", inches.of(new Measure(11_000, Unit.MPA)));
    assertEquals("3012\u00a0psi", inches.of(new Measure(20.77, Unit.MPA)));
  }
}
