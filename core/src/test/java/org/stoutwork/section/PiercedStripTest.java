package org.stoutwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PiercedStripTest {

  /** 410 − 3·19 = 353; 1/(1 + 19/125·(410/353 − 1)) = 1/1.024544. */
  @Test
  void holes_take_width_and_stiffness() {
    PiercedStrip strip = new PiercedStrip(410, 3, 19, 125);
    assertEquals(353, strip.netWidth(), 1e-9);
    assertEquals(0.976044, strip.stiffnessRatio(), 1e-6);
  }

  @Test
  void a_strip_without_holes_keeps_all() {
    PiercedStrip strip = new PiercedStrip(410, 0, 19, 125);
    assertEquals(410, strip.netWidth(), 0);
    assertEquals(1, strip.stiffnessRatio(), 0);
  }

  /** Rows that touch are one slot: the stiffness is that of the net width. */
  @Property
  void stiffness_lies_between_that_of_the_net_and_of_the_whole_width(
      @ForAll @IntRange(min = 1, max = 6) int holes,
      @ForAll @DoubleRange(min = 8, max = 30) double d,
      @ForAll @DoubleRange(min = 1.01, max = 9) double spread) {
    double net = new PiercedStrip(487, holes, d, d).netWidth();
    assertEquals(net / 487, new PiercedStrip(487, holes, d, d).stiffnessRatio(), 1e-12);
    double ratio = new PiercedStrip(487, holes, d, spread * d).stiffnessRatio();
    assertTrue(net / 487 < ratio && ratio < 1, "ratio " + ratio);
    assertTrue(new PiercedStrip(487, holes + 1, d, spread * d).stiffnessRatio() < ratio);
  }

  @ParameterizedTest
  @CsvSource({
    "410, 3, 19, 18.9, run into each other",
    "57, 3, 19, 125, leave nothing",
    "0, 3, 19, 125, positive width",
    "410, -1, 19, 125, no fewer than 0 holes",
    "410, 3, NaN, 125, positive width",
    "410, 3, 19, Infinity, positive width"
  })
  void impossible_strips_are_refused(
      double width, int holes, double d, double pitch, String because) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> new PiercedStrip(width, holes, d, pitch));
    assertTrue(refused.getMessage().contains(because), refused.getMessage());
  }
}
