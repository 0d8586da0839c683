package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.working.Pad;

/** A tenon 18 × 70 mm with bores of 9 mm along it, worked by hand, and what it refuses. */
class BoredTenonByHandTest {

  private static final Pad PAD = Pad.blank();

  private static BoredTenon tenon(double t, double h, double bore, Double... levers) {
    return new BoredTenon(t, h, bore, List.of(levers));
  }

  private static void refused(String words, double t, double h, double bore, Double... levers) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> tenon(t, h, bore, levers)).getMessage();
    assertTrue(message.contains(words), message);
  }

  @Test
  void one_bore_off_the_middle_takes_area_and_shifts_the_axis() {
    BoredTenon.Root root = tenon(18, 70, 9, 11.0).root(PAD);
    // A_b = π·9²/4 = 63.6173; 18·70 - 63.6173 = 1196.3827 mm²; c = 63.6173·11/1196.3827 = 0.584921.
    assertEquals(1196.38275, root.area(), 1e-4);
    // 18·70³/12 - π·9⁴/64 - 63.6173·11² - 1196.3827·c² = 506070.93; /(35 + c) = 14221.499 mm³.
    assertEquals(14221.4992, root.upright(), 1e-3);
    // 70·18³/12 - π·9⁴/64 = 33697.938; ·2/18 = 3744.2153 mm³.
    assertEquals(3744.21530, root.sideways(), 1e-4);
  }

  @Test
  void two_bores_at_unequal_distances_partly_balance_each_other() {
    BoredTenon two = tenon(18, 70, 9, 22.0, -13.0);
    // 1260 - 2·63.6173 = 1132.7655; c = 63.6173·9/1132.7655 = 0.505449;
    // 514500 - 2·322.062 - 63.6173·(22² + 13²) - 1132.7655·c² = 472024.41; /(35 + c).
    assertEquals(13294.4217, two.root(PAD).upright(), 1e-3);
    // 12·(34020 - 2·322.062)·(70 - 18)/(70·18³) = 51.01545 mm.
    assertEquals(51.0154473, two.shearHeight(PAD), 1e-6);
    assertEquals(52, two.twistHeight(PAD));
    assertTrue(two.bored());
    assertFalse(BoredTenon.sound(18, 70).bored());
  }

  @Test
  void a_bore_as_wide_as_the_tenon_is_refused_and_a_narrower_one_taken() {
    refused("does not lie inside a tenon of 18.0 mm × 70.0 mm", 18, 70, 18, 11.0);
    assertTrue(tenon(18, 70, 17.9, 11.0).bored());
    refused("a bore of 0.0 mm", 18, 70, 0, 11.0);
    assertTrue(tenon(18, 70, 0.1, 11.0).bored());
  }

  @Test
  void a_bore_may_touch_the_edge_of_its_tenon_but_not_cut_it() {
    // 35 - 4.5 = 30.5 mm up or down.
    assertTrue(tenon(18, 70, 9, 30.5).bored());
    assertTrue(tenon(18, 70, 9, -30.5).bored());
    refused("30.6 mm from the middle", 18, 70, 9, 30.6);
    refused("-30.6 mm from the middle", 18, 70, 9, -30.6);
  }

  @Test
  void bores_that_take_the_whole_height_are_refused() {
    refused("2 bores of 20.0 mm leave nothing of a tenon 40.0 mm high", 23, 40, 20, 10.0, -10.0);
    assertTrue(tenon(23, 40, 19.9, 10.0, -10.0).bored());
  }
}
