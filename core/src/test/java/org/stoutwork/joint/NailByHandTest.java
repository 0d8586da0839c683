package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.NDS;
import static org.stoutwork.joint.ByHand.SOFT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Nail;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.HungForces;
import org.stoutwork.joint.screwed.NailCapacity;
import org.stoutwork.joint.screwed.Nailing;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/**
 * One nail of 2.6 mm with a head of 5.9 mm and wire of 620 MPa through softwood of 390 kg/m³ (0.47)
 * into hardwood of 560 kg/m³ (0.61), worked by hand: EN 1995-1-1 8.2.2, 8.3.1, 8.3.2 with k_mod 0.7
 * and γ_M 1.3, NDS 12.2, 12.3 with C_D 1.25; formulas from memory.
 */
class NailByHandTest {

  private static final double CLOSE = 1e-6;

  private static Nailing nailing(double length, double thickness, double pilot) {
    Nail nail = new Nail(2.6, length, 5.9, 620);
    return new Nailing(nail, thickness, SOFT, HARD, false, pilot);
  }

  private static List<JointLimit> limits(Nailing nailing, StrengthFamily family, Seat... seats) {
    RowForces forces = RowForces.one(55, 90);
    return NailCapacity.utilisations(nailing, family, forces, List.of(seats), true);
  }

  private static void carries(
      double newtons, Nailing nailing, StrengthFamily family, String failure) {
    JointLimit limit = Found.named(limits(nailing, family), failure);
    assertEquals(newtons, limit.capacity(), CLOSE * newtons);
  }

  @Test
  void the_shank_is_held_by_the_wood_that_the_point_sits_in() {
    // 20e-6·560² = 6.272 MPa; ·2.6·44 mm = 717.517 N; ·0.7/1.3 = 386.355 N.
    carries(386.355200, nailing(61, 17, 2), EC5, "nail pulling out");
    // 28 mm are 10.8 d: 28/(4·2.6) - 2 = 0.692308; 6.272·2.6·28·0.692308·0.7/1.3 = 170.212 N.
    carries(170.212431, nailing(45, 17, 2), EC5, "nail pulling out");
    // 1380·0.61^2.5·(2.6/25.4) lbf/in · 44/25.4 in · 1.25 · 4.44822 N/lbf = 395.420 N.
    carries(395.420057, nailing(61, 17, 2), NDS, "nail pulling out");
  }

  @Test
  void the_head_is_held_by_the_wood_under_it() {
    // 20e-6·390² = 3.042, 70e-6·390² = 10.647 MPa; 3.042·2.6·17 + 10.647·5.9² = 505.078 N;
    // ·0.7/1.3 = 271.965 N.
    carries(271.965330, nailing(61, 17, 2), EC5, "nail head pulling through");
    // 17 mm are more than 2.5 heads of 5.9 mm = 14.75 mm:
    // 690·π·(5.9/25.4)·0.47²·(14.75/25.4) lbf · 4.44822 · 1.25 = 359.143 N.
    carries(359.143249, nailing(61, 17, 2), NDS, "nail head pulling through");
    // 4 mm are less: ·4/14.75 = 97.3948 N.
    carries(97.3947794, nailing(61, 4, 2), NDS, "nail head pulling through");
  }

  @Test
  void a_drilled_hole_bears_by_its_diameter_and_a_driven_nail_less() {
    // Drilled: 0.082·(1 - 0.026)·390 = 31.1485 MPa; a piece of 4 mm crushes: ·2.6·4 = 323.945 N.
    carries(323.944608 * 0.7 / 1.3, nailing(61, 4, 2), EC5, "nail yielding across");
    // Driven: 0.082·390·2.6^-0.3 = 24.0097 MPa; ·2.6·4 = 249.701 N.
    carries(249.700720 * 0.7 / 1.3, nailing(61, 4, 0), EC5, "nail yielding across");
  }

  @Test
  void the_wire_yields_at_its_strength() {
    // M_y = 0.3·620·2.6^2.6 = 2230.71 N·mm, bearing 31.1485 and 44.7261 MPa, β = 1.43590.
    // One hinge, 17 mm: 1.05·31.1485·2.6·17/3.43590 · (sqrt(2·1.43590·2.43590
    // + 4·1.43590·3.43590·2230.71/(31.1485·2.6·17²)) - 1.43590) = 649.366 N.
    carries(649.366437 * 0.7 / 1.3, nailing(61, 17, 2), EC5, "nail yielding across");
    // Two hinges, 30 mm: 1.15·sqrt(2·1.43590/2.43590)·sqrt(2·2230.71·31.1485·2.6) = 750.563 N.
    carries(750.563176 * 0.7 / 1.3, nailing(81, 30, 2), EC5, "nail yielding across");
  }

  @Test
  void the_wire_yields_by_the_american_table_too() {
    // F_e = 16600·G^1.84 psi: 46.0929 MPa at 0.61, 28.5290 at 0.47; R_e = 1.61565; R_d = 2.2.
    // Two hinges, 690 MPa: 2.6²/2.2·sqrt(2·46.0929·690/(3·2.61565)) = 276.650 N; ·1.25.
    carries(345.812152, nailing(81, 30, 2), NDS, "nail yielding across");
    // A piece of 4 mm crushes: 2.6·4·28.5290/2.2 = 134.865 N; ·1.25.
    carries(168.580680, nailing(61, 4, 2), NDS, "nail yielding across");
  }

  @Test
  void a_nail_must_reach_in_by_eight_diameters() {
    JointLimit reach = Found.named(limits(nailing(61, 17, 2), EC5), "reach of the nail");
    assertEquals(44, reach.capacity());
    assertEquals(20.8, reach.demand(), 1e-12);
    assertEquals(JointLimit.Nature.RULE, reach.nature());
  }

  @Test
  void only_a_nail_without_a_hole_can_split_the_piece_under_its_head() {
    String split = "piece split by the nail";
    JointLimit thin = Found.named(limits(nailing(61, 17, 0), EC5), split);
    // max(7·2.6, (13·2.6 - 30)·390/400) = max(18.2, 3.7) mm, and 17 mm are there.
    assertEquals(18.2, thin.demand(), 1e-12);
    assertEquals(17, thin.capacity());
    Nailing stout = new Nailing(new Nail(4.2, 90, 8.5, 620), 33, HARD, SOFT, false, 0);
    // max(7·4.2, (13·4.2 - 30)·560/400) = max(29.4, 34.44) mm.
    assertEquals(34.44, Found.named(limits(stout, NDS), split).demand(), 1e-12);
    assertTrue(limits(nailing(61, 17, 2), EC5).stream().noneMatch(l -> l.failure().equals(split)));
  }

  @Test
  void a_hole_for_a_nail_may_be_too_wide_in_light_wood_but_never_too_narrow() {
    Nailing light = new Nailing(new Nail(2.6, 61, 5.9, 620), 17, HARD, SOFT, false, 0.4);
    JointLimit hole = Found.named(limits(light, EC5), "hole drilled for the nail");
    // At most 0.8·2.6 = 2.08 mm; at 390 kg/m³ none need be drilled.
    assertEquals(2.08, hole.capacity(), 1e-12);
    assertEquals(0.4, hole.demand());
  }

  @Test
  void a_nail_sits_so_far_from_the_end_as_its_use_asks_for() {
    Seat seat = new Seat("lipping", 19, 13, 12, 9, 60, 6.5);
    List<JointLimit> limits = limits(nailing(61, 17, 2), EC5, seat);
    // 90 N of 349.659 N: u = 0.257394. Drilled, 60°: end 7 d to 9.5 d = 18.2 to 24.7 mm:
    // 18.2 + 0.257394·6.5 = 19.8731 mm; edge 3 d to 4.73205 d = 7.8 to 12.3033 mm: 8.95913 mm.
    JointLimit end = Found.named(limits, "nail from the end of the lipping");
    assertEquals(19.87306, end.demand(), 1e-5);
    assertEquals(19, end.capacity());
    JointLimit edge = Found.named(limits, "nail from the edge of the lipping");
    assertEquals(8.95913, edge.demand(), 1e-5);
    // (4 + 0.5)·2.6 = 11.7 mm along and (3 + 0.866025)·2.6 = 10.0517 mm across.
    JointLimit along = Found.named(limits, "spacing of nails along the grain");
    assertEquals(11.7, along.demand(), 1e-9);
    assertFalse(along.utilisation() > 1);
    JointLimit across = Found.named(limits, "spacing of nails across the grain");
    assertEquals(10.051666, across.demand(), 1e-6);
    assertTrue(across.utilisation() > 1);
  }

  @Test
  void a_driven_nail_sits_farther_from_the_end_than_a_drilled_one() {
    Seat seat = new Seat("lipping", 31, 13, 12, 9, 0, 6.5);
    String spacing = "spacing of nails across the grain";
    // Up to 420 kg/m³ undrilled 5 d = 13 mm, drilled 3 d = 7.8 mm at 0°.
    assertEquals(13, Found.named(limits(nailing(61, 17, 0), EC5, seat), spacing).demand(), 1e-12);
    assertEquals(7.8, Found.named(limits(nailing(61, 17, 2), EC5, seat), spacing).demand(), 1e-12);
  }

  @Test
  void end_grain_says_why_it_holds_no_nail() {
    Nailing end = new Nailing(new Nail(2.6, 61, 5.9, 620), 17, SOFT, HARD, true, 2);
    JointLimit out = Found.named(limits(end, EC5), "nail pulling out");
    assertEquals(0, out.capacity());
    assertTrue(Found.remarks(out, "end grain"));
    // Across it holds 0.67 of the table: two hinges 345.812 N at 30 mm.
    Nailing thick = new Nailing(new Nail(2.6, 81, 5.9, 620), 30, SOFT, HARD, true, 2);
    carries(345.812152 * 0.67, thick, NDS, "nail yielding across");
  }

  @Test
  void pull_and_shear_of_a_nail_add_straight_by_both_codes() {
    String both = "pull and shear of the nail together";
    // The head holds less than the shank: 55/271.965 + 90/(649.366·0.7/1.3).
    assertEquals(
        55 / 271.965330 + 90 / (649.366437 * 0.7 / 1.3),
        Found.named(limits(nailing(61, 17, 2), EC5), both).demand(),
        CLOSE);
    // 55/359.143 + 90/345.812 with 30 mm under the head, where the shank of 395.420 N holds more.
    JointLimit nds = Found.named(limits(nailing(81, 30, 2), NDS), both);
    assertEquals(55 / 359.143249 + 90 / 345.812152, nds.demand(), CLOSE);
    assertEquals(1, nds.capacity());
  }

  /** 240 N lifted by a strip of 11 mm on an edge of 58 mm, on seven nails. */
  @Test
  void a_lift_in_the_middle_of_a_strip_pulls_its_nails_too() {
    HungForces hung = new HungForces(7, 240, 11, 58);
    // 240·5.5 N·mm over 58/3 mm = 68.2759 N; of seven nails 7^0.9 count by the European code.
    assertEquals(68.275862 / Math.pow(7, 0.9), hung.pullOfOne(Pad.blank(), EC5), 1e-6);
    assertEquals(68.275862 / 7, hung.pullOfOne(Pad.blank(), NDS), 1e-6);
    assertEquals(240 / 7.0, hung.shearOfOne(Pad.blank(), EC5, nailing(61, 17, 2)), 1e-12);
  }
}
