package org.stoutwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PiercedStripTest {

  /** 410 − 3·19 = 353; 1/(1 + 19/125·(410/353 − 1)) = 1/1.024544. */
  @Test
  void holes_take_width_and_stiffness() {
    PiercedStrip strip = new PiercedStrip(410, 3 * 19, 19 / 125.0);
    assertEquals(353, strip.netWidth(), 1e-9);
    assertEquals(0.976044, strip.stiffnessRatio(), 1e-6);
  }

  @Test
  void a_strip_without_holes_keeps_all() {
    PiercedStrip strip = new PiercedStrip(410, 0, 19 / 125.0);
    assertEquals(410, strip.netWidth(), 0);
    assertEquals(1, strip.stiffnessRatio(), 0);
  }

  /** Rows that touch are one slot: the stiffness is that of the net width. */
  @Property
  void stiffness_lies_between_that_of_the_net_and_of_the_whole_width(
      @ForAll @DoubleRange(min = 8, max = 240) double taken,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double part) {
    double net = new PiercedStrip(487, taken, 1).netWidth();
    assertEquals(net / 487, new PiercedStrip(487, taken, 1).stiffnessRatio(), 1e-12);
    double ratio = new PiercedStrip(487, taken, part).stiffnessRatio();
    assertTrue(net / 487 < ratio && ratio < 1, "ratio " + ratio);
    assertTrue(new PiercedStrip(487, taken + 20, part).stiffnessRatio() < ratio);
    assertTrue(new PiercedStrip(487, taken, part + 0.01).stiffnessRatio() < ratio);
  }

  @ParameterizedTest
  @CsvSource({
    "410, 57, 1.01, run into each other",
    "57, 57, 0.2, leave nothing",
    "0, 0, 0.2, positive width",
    "410, -1, 0.2, leave nothing",
    "410, NaN, 0.2, leave nothing",
    "Infinity, 57, 0.2, positive width",
    "410, 57, NaN, run into each other"
  })
  void impossible_strips_are_refused(double width, double taken, double part, String because) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> new PiercedStrip(width, taken, part));
    assertTrue(refused.getMessage().contains(because), refused.getMessage());
  }
}
