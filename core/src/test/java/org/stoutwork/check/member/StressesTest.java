package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.section.NetSection;
import org.stoutwork.section.Opening;
import org.stoutwork.section.Rectangle;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Strength of one section by hand: 44 mm x 104 mm, A = 4576 mm², W_y = 44·104²/6 = 79 317 mm³, W_z
 * = 104·44²/6 = 33 557 mm³. Under 18 kN, 450 N·m and 120 N·m: 3.9336, 5.6734 and 3.5760 MPa.
 */
class StressesTest {

  private static final Cut CUT = cut(Opening.NONE, Opening.NONE);

  private static Cut cut(Opening upDown, Opening sideways) {
    return new Cut(
        null,
        "m1",
        0,
        0,
        NetSizes.of(new NetSection(new Rectangle(44, 104), upDown)),
        NetSizes.of(new NetSection(new Rectangle(104, 44), sideways)),
        0);
  }

  private static Stresses european(double lengthY, double lengthZ) {
    return new Stresses(
        BasisChoice.PARTIAL_FACTORS,
        22,
        14,
        17,
        2.6,
        25,
        10_100,
        0.67,
        lengthY,
        lengthZ,
        Lateral.NONE);
  }

  private static Stresses american(double lengthY, double lengthZ) {
    return new Stresses(
        BasisChoice.CLEAR_WOOD, 13.1, 7.2, 9.6, 1.4, 9.6, 8300, 1, lengthY, lengthZ, Lateral.NONE);
  }

  private static double[] forces(double n) {
    return new double[] {n, -900, 2100, 31_000, 450_000, -120_000};
  }

  private static void assertUse(double expected, Stresses stresses, double n) {
    assertEquals(expected, stresses.bending(CUT, forces(n), Pad.blank()), 1e-6 * expected);
  }

  /** 3.9336/14 + max(5.6734 + 0.7·3.5760, 0.7·5.6734 + 3.5760)/22 = 0.2810 + 0.3717. */
  @Test
  void tension_adds_to_the_worse_sum_of_bending() {
    assertUse(0.652632293, european(1400, 1250), 18_000);
  }

  /** 3.9336/7.2 + (5.6734 + 3.5760)/13.1 = 0.5463 + 0.7061. */
  @Test
  void tension_adds_to_the_whole_bending_of_clear_wood() {
    assertUse(1.252388413, american(1400, 610), 18_000);
  }

  /**
   * λ_rel 0.7385 up and down and 1.5585 sideways. Sideways: k = 0.5(1 + 0.2(1.5585 - 0.3) +
   * 1.5585²) = 1.8403, k_c = 0.3547; 3.9336/(0.3547·17) + 0.7·5.6734/22 + 3.5760/22 = 0.9953.
   */
  @Test
  void a_strut_buckles_sideways_where_it_is_thin() {
    assertUse(0.995340129, european(1400, 1250), -18_000);
  }

  /** λ_rel 2.0572 leaves 0.2137: 3.9336/(0.2137·17) + 5.6734/22 + 0.7·3.5760/22 = 1.4544. */
  @Test
  void a_long_strut_held_sideways_buckles_up_and_down() {
    assertUse(1.454350596, european(3900, 400), -18_000);
  }

  /** Both λ_rel at most 0.153: k_c = 1; 3.9336/17 + 5.6734/22 + 0.7·3.5760/22 = 0.6030. */
  @Test
  void a_stocky_strut_keeps_its_whole_strength() {
    assertUse(0.603049523, european(290, 120), -18_000);
  }

  /**
   * 1.7 and 18.7 MPa: 1.7/(0.8584·17) + 0.85 = 0.9665 and 1.7/(0.3547·17) + 0.7·0.85 = 0.8769, but
   * 0.85² + 1.7/(0.3547·17) = 1.0044.
   */
  @Test
  void a_strut_that_keeps_its_bending_strength_is_asked_for_eq_6_35_too() {
    double[] forces = {-1.7 * 4576, 0, 0, 0, -18.7 * 44 * 104 * 104 / 6.0, 0};
    RecordingPad pad = Pad.recording();
    assertEquals(1.0044, european(1400, 1250).bending(CUT, forces, pad), 1e-4);
    List<Line> lines = pad.working().lines();
    Line.Calculated last = (Line.Calculated) lines.get(lines.size() - 1);
    assertTrue(last.formula().source().place().contains("6.35"), last.text());
  }

  /** 88 × 88 mm, A = 7744 mm², W = 113 579 mm³; k_c 0.7799 and 0.4098: 0.85² + 0.2/0.4098. */
  @Test
  void a_square_strut_buckles_across_either_way_of_bending() {
    NetSizes square = NetSizes.of(new NetSection(new Rectangle(88, 88), Opening.NONE));
    double moment = 0.85 * 22 * 88 * 88 * 88 / 6.0;
    double[] upright = {-0.2 * 17 * 7744, 0, 0, 0, moment, 0};
    double[] sideways = {-0.2 * 17 * 7744, 0, 0, 0, 0, moment};
    double one = european(1400, 2300).bending(square, square, upright, Pad.blank());
    assertEquals(one, european(2300, 1400).bending(square, square, sideways, Pad.blank()), 1e-12);
    assertEquals(0.7225 + 0.2 / 0.40982, one, 1e-4);
  }

  @Test
  void the_governing_way_of_buckling_is_written_last() {
    assertLast(1400, 1250, "k_{c,z}");
    assertLast(3900, 400, "k_{c,y}");
  }

  private static void assertLast(double lengthY, double lengthZ, String symbol) {
    RecordingPad pad = Pad.recording();
    european(lengthY, lengthZ).bending(CUT, forces(-18_000), pad);
    List<Line> lines = pad.working().lines();
    String last = ((Line.Calculated) lines.get(lines.size() - 1)).formula().inSymbols();
    assertTrue(last.contains(symbol), last);
  }

  /**
   * Slenderness 13.46 and 13.86: F_cE = 0.822·5000/13.46² = 22.68 and 21.38 MPa; C_P of the latter
   * 0.8838; (3.9336/(0.8838·9.6))² + 5.6734/(13.1(1 - 3.9336/22.68)) + 3.5760/(13.1(1 -
   * 3.9336/21.38)) = 1.0734.
   */
  @Test
  void clear_wood_buckles_by_its_greater_slenderness() {
    assertUse(1.073429120, american(1400, 610), -18_000);
  }

  /** Slenderness 22.12 and 9.09: F_cE = 8.403 and 49.73 MPa; C_P 0.6433; 1.5163. */
  @Test
  void clear_wood_held_sideways_buckles_up_and_down() {
    assertUse(1.516325870, american(2300, 400), -18_000);
  }

  /** F_cE = 0.822·5000/(3400/104)² = 3.845 MPa, less than the 3.934 that act. */
  @Test
  void beyond_the_critical_stress_no_strength_is_left() {
    RecordingPad pad = Pad.recording();
    assertEquals(Double.MAX_VALUE, american(3400, 400).bending(CUT, forces(-18_000), pad));
    assertTrue(
        pad.working().lines().stream()
            .anyMatch(l -> l instanceof Line.Remark r && r.text().contains("the member buckles")));
    double sideways = american(400, 1450).bending(CUT, forces(-18_000), Pad.blank());
    assertEquals(Double.MAX_VALUE, sideways);
  }

  private static Stresses slender(BasisChoice basis, double lengthY, double lengthZ) {
    return basis == BasisChoice.PARTIAL_FACTORS
        ? new Stresses(
            basis, 22, 14, 17, 2.6, 25, 10_100, 0.67, lengthY, lengthZ, new Lateral(0.7, 27, false))
        : new Stresses(
            basis,
            13.1,
            7.2,
            9.6,
            1.4,
            9.6,
            8300,
            1,
            lengthY,
            lengthZ,
            new Lateral(0.8, 30, false));
  }

  /** k_crit = 0.7: 3.9336/14 + max(5.6734/0.7 + 0.7·3.5760, 5.6734 + 3.5760)/22 = 0.7632. */
  @Test
  void lateral_buckling_takes_its_part_of_bending_about_the_stronger_axis() {
    assertUse(0.763153328, slender(BasisChoice.PARTIAL_FACTORS, 1400, 1250), 18_000);
  }

  /** k_c,y 0.8584, k_c,z 0.9505: 3.9336/(0.8584·17) + 5.6734/(0.7·22) + 0.7·3.5760/22 = 0.7517. */
  @Test
  void a_deep_thin_strut_buckles_with_the_rest_of_its_bending_strength() {
    assertUse(0.751725689, slender(BasisChoice.PARTIAL_FACTORS, 1400, 400), -18_000);
    assertUse(1.072704853, slender(BasisChoice.PARTIAL_FACTORS, 1400, 1250), -18_000);
  }

  /** EN 1995-1-1 eq. 6.35, 1350 N·m up and down alone: (17.020/15.4)² + 3.9336/(0.2136·17). */
  @Test
  void lateral_buckling_of_a_strut_is_written_last_where_it_governs() {
    RecordingPad pad = Pad.recording();
    double[] forces = {-18_000, 0, 0, 0, 1_350_000, 0};
    double use = slender(BasisChoice.PARTIAL_FACTORS, 900, 1650).bending(CUT, forces, pad);
    assertEquals(2.304177250, use, 1e-8);
    List<Line> lines = pad.working().lines();
    Line.Calculated last = (Line.Calculated) lines.get(lines.size() - 1);
    assertEquals(use, last.value(), 0);
    assertTrue(last.formula().source().place().contains("6.35"), last.text());
  }

  /** A section that lies flat is stronger sideways: there the factor counts. */
  @Test
  void a_flat_section_buckles_laterally_out_of_its_sideways_bending() {
    Cut flat =
        new Cut(
            null,
            "m1",
            0,
            0,
            NetSizes.of(new NetSection(new Rectangle(104, 44), Opening.NONE)),
            NetSizes.of(new NetSection(new Rectangle(44, 104), Opening.NONE)),
            0);
    double[] upright = {-18_000, 0, 0, 0, 450_000, 120_000};
    double[] lying = {-18_000, 0, 0, 0, 120_000, 450_000};
    for (BasisChoice basis : BasisChoice.values()) {
      for (double sense : new double[] {1, -1}) {
        upright[0] = sense * 18_000;
        lying[0] = sense * 18_000;
        assertEquals(
            slender(basis, 1400, 610).bending(CUT, upright, Pad.blank()),
            slender(basis, 610, 1400).bending(flat, lying, Pad.blank()),
            1e-12);
      }
    }
  }

  /** C_L = 0.8, F_bE = 30: 0.5463 + 5.6734/(0.8·13.1) + 3.5760/(13.1(1 - (5.6734/30)²)). */
  @Test
  void lateral_buckling_of_clear_wood_takes_both_ways_of_bending() {
    assertUse(1.370784433, slender(BasisChoice.CLEAR_WOOD, 1400, 610), 18_000);
  }

  /** C_L = 1, F_bE = 30: 0.5463 + 5.6734/13.1 + 3.5760/(13.1(1 - (5.6734/30)²)) = 1.2625. */
  @Test
  void the_critical_stress_of_clear_wood_counts_where_no_strength_is_lost() {
    Stresses stout =
        new Stresses(
            BasisChoice.CLEAR_WOOD,
            13.1,
            7.2,
            9.6,
            1.4,
            9.6,
            8300,
            1,
            1400,
            610,
            new Lateral(1, 30, false));
    assertEquals(1.262513, stout.bending(CUT, forces(18_000), Pad.blank()), 1e-5);
  }

  /** NDS eq. 3.9-3 with C_P 0.8838, F_cE 22.680 and 21.384 MPa. */
  @Test
  void a_deep_thin_strut_of_clear_wood() {
    assertUse(1.219750327, slender(BasisChoice.CLEAR_WOOD, 1400, 610), -18_000);
  }

  @Test
  void beyond_its_lateral_buckling_stress_a_member_of_clear_wood_carries_nothing() {
    // 31 MPa of 30; pressed, 28 MPa and 3.9 MPa of 21.4 together.
    double[] pulled = {18_000, 0, 0, 0, 31 * 44 * 104 * 104 / 6.0, 0};
    double[] pressed = {-18_000, 0, 0, 0, 28 * 44 * 104 * 104 / 6.0, 0};
    Stresses stresses = slender(BasisChoice.CLEAR_WOOD, 1400, 610);
    assertEquals(Double.MAX_VALUE, stresses.bending(CUT, pulled, Pad.blank()));
    assertEquals(Double.MAX_VALUE, stresses.bending(CUT, pressed, Pad.blank()));
    Stresses tooSlender =
        new Stresses(
            BasisChoice.CLEAR_WOOD,
            13.1,
            7.2,
            9.6,
            1.4,
            9.6,
            8300,
            1,
            1400,
            610,
            new Lateral(0.1, 1.4, true));
    RecordingPad pad = Pad.recording();
    assertEquals(Double.MAX_VALUE, tooSlender.bending(CUT, forces(1), pad));
    assertTrue(
        pad.working().lines().stream()
            .anyMatch(l -> l instanceof Line.Remark r && r.text().contains("R_B is above 50")));
  }

  /** 1.5·√((2100/4576)² + (900/4576)²)/0.67 = 1.11778 MPa. */
  @Test
  void shear_of_both_ways_is_added_as_vectors_on_the_width_without_checks() {
    double tau = 1.5 * Math.hypot(2100 / 4576.0, 900 / 4576.0) / 0.67;
    assertEquals(tau, european(1, 1).shearStress(CUT, forces(0), Pad.blank()), 1e-9);
    assertEquals(tau / 2.6, european(1, 1).shear(CUT, forces(0), Pad.blank()), 1e-9);
    assertEquals(0.67 * tau / 1.4, american(1, 1).shear(CUT, forces(0), Pad.blank()), 1e-9);
  }

  /** A mortise 14 mm wide and 60 mm deep in the middle: W = (44·104³ - 14·60³)/12/52. */
  @Test
  void a_mortise_takes_its_part_of_area_and_modulus() {
    Cut mortised = cut(new Opening(14, 60, 0), new Opening(60, 14, 0));
    assertEquals(4576 - 840, mortised.area(), 1e-9);
    double wy = (44 * Math.pow(104, 3) - 14 * Math.pow(60, 3)) / 12 / 52;
    double wz = (104 * Math.pow(44, 3) - 60 * Math.pow(14, 3)) / 12 / 22;
    double use = 18_000.0 / 3736 / 7.2 + (450_000 / wy + 120_000 / wz) / 13.1;
    assertEquals(use, american(1400, 610).bending(mortised, forces(18_000), Pad.blank()), 1e-9);
  }
}
