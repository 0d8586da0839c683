package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.working.Pad;

/** A tenon 16 × 80 × 50 mm over a shoulder of 18 mm that bolts cross, worked by hand. */
class CrossedTenonByHandTest {

  private static final Pad PAD = Pad.blank();

  private static CrossedTenon tenon(CrossBore... bores) {
    return CrossedTenon.of(16, 80, 18, 50, List.of(bores));
  }

  private static double modulus(CrossedTenon tenon) {
    return tenon.modulus(PAD, tenon.left(PAD));
  }

  @Test
  void one_bore_off_the_middle_shifts_the_axis_of_what_is_left() {
    CrossedTenon tenon = tenon(new CrossBore(11, 63, 28));
    // Middle 63 - 18 - 40 = 5, from -0.5 to 10.5; 80 - 11 = 69 mm are left.
    assertEquals(-0.5, tenon.slots().get(0).from());
    assertEquals(10.5, tenon.slots().get(0).to());
    assertEquals(5, tenon.slots().get(0).middle());
    assertEquals(22.5, tenon.near());
    assertEquals(69, tenon.left(PAD));
    // c = 11·5/69 = 0.797101; I = 16·(80³/12 - 11³/12 - 11·5² - 69·c²) = 675790.55 mm⁴;
    // /(40 + 0.797101) = 16564.671 mm³.
    assertEquals(16564.6707, modulus(tenon), 1e-3);
  }

  @Test
  void two_bores_are_counted_from_the_lowest_whatever_their_order() {
    CrossBore high = new CrossBore(13, 75, 31);
    CrossBore low = new CrossBore(9, 35, 24);
    // Slots 10.5 to 23.5 and -27.5 to -18.5: parts of 12.5, 29 and 16.5 mm.
    for (CrossedTenon tenon : List.of(tenon(high, low), tenon(low, high))) {
      assertEquals(-27.5, tenon.slots().get(0).from());
      assertEquals(19.5, tenon.near());
      assertEquals(58, tenon.left(PAD));
      // (12.5³ + 29³ + 16.5³)/29² = 30834.25/841 = 36.66379 mm.
      assertEquals(36.663793, tenon.sheared(PAD), 1e-6);
      // 9·(-23) + 13·17 = 14, c = 14/58; 9³/12 + 9·23² + 13³/12 + 13·17² = 8761.833;
      // 16·(42666.667 - 8761.833 - 58·c²)/(40 + c) = 13479.241 mm³.
      assertEquals(13479.2414, modulus(tenon), 1e-3);
    }
  }

  @Test
  void a_bore_that_runs_out_at_an_edge_takes_only_what_lies_in_the_tenon() {
    // Middle 39, 10 mm: 34 to 40; 16·(42666.667 - 6³/12 - 6·37² - 74·3²)/(40 + 3) = 12565.085.
    CrossedTenon top = tenon(new CrossBore(10, 97, 28));
    assertEquals(74, top.left(PAD));
    assertEquals(12565.0853, modulus(top), 1e-3);
    // Middle -38, 10 mm: -40 to -33; 7 mm with their middle at -36.5; 11923.893.
    CrossedTenon bottom = tenon(new CrossBore(10, 20, 28));
    assertEquals(73, bottom.left(PAD));
    assertEquals(11923.8927, modulus(bottom), 1e-3);
  }

  @Test
  void no_part_is_left_between_bores_that_overlap() {
    // -0.5 to 10.5 and 6 to 18: parts of 39.5, none and 22 mm: (39.5³ + 22³)/39.5² = 46.3245.
    CrossedTenon tenon = tenon(new CrossBore(12, 70, 38), new CrossBore(11, 63, 16));
    assertEquals(46.324547, tenon.sheared(PAD), 1e-6);
    // A bore inside another: -11 to 11 and 2 to 6: parts of 29, none and 29 mm: 58 mm.
    CrossedTenon inside = tenon(new CrossBore(22, 58, 28), new CrossBore(4, 62, 45));
    assertEquals(58, inside.sheared(PAD), 1e-9);
  }

  @Test
  void a_bore_that_only_touches_edge_or_end_does_not_cross() {
    // Touching above at 40 + 5.5 over the middle, 103.5; below at 12.5; beyond the end at 55.5.
    assertFalse(tenon(new CrossBore(11, 103.5, 28)).crossed());
    assertTrue(tenon(new CrossBore(11, 103.4, 28)).crossed());
    assertFalse(tenon(new CrossBore(11, 12.5, 28)).crossed());
    assertTrue(tenon(new CrossBore(11, 12.6, 28)).crossed());
    assertFalse(tenon(new CrossBore(11, 63, 55.5)).crossed());
    assertTrue(tenon(new CrossBore(11, 63, 55.4)).crossed());
  }

  @Test
  void a_bore_over_the_whole_height_leaves_nothing() {
    CrossedTenon gone = tenon(new CrossBore(80, 58, 42));
    assertEquals(0, gone.left(PAD));
    assertEquals(0, gone.sheared(PAD));
  }
}
