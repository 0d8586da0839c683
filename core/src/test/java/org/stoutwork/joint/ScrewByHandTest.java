package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.COACH;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.NDS;
import static org.stoutwork.joint.ByHand.SOFT;
import static org.stoutwork.joint.ByHand.WOOD;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/**
 * A wood screw 5.2 × 83 mm and a coach screw 10 × 117 mm through softwood of 390 kg/m³ (0.47) into
 * hardwood of 560 kg/m³ (0.61), shear at 70° and 25° to their grains, worked by hand: EN 1995-1-1
 * 8.2.2, 8.5, 8.7 with k_mod 0.7, γ_M 1.3, γ_M2 1.15, NDS 12.2, 12.3 with C_D 1.25; formulas from
 * memory.
 */
class ScrewByHandTest {

  private static final double K = 0.7 / 1.3;

  private static Screwing screwing(Screw screw, double thickness, boolean end) {
    ScrewHole hole = ScrewHole.round(screw == COACH ? 11 : screw.diameter());
    return new Screwing(screw, thickness, SOFT, HARD, 70, 25, end, hole, 3);
  }

  private static JointLimit limit(
      Screwing screwing, StrengthFamily family, RowForces forces, String failure) {
    return Found.named(
        ScrewCapacity.utilisations(screwing, family, forces, List.of(), List.of(), true), failure);
  }

  private static void carries(
      double newtons, Screwing screwing, StrengthFamily family, String failure) {
    JointLimit limit = limit(screwing, family, RowForces.one(400, 300), failure);
    assertEquals(newtons, limit.capacity(), 1e-6 * newtons);
  }

  @Test
  void the_thread_holds_in_the_wood_of_the_point() {
    String out = "thread pulling out";
    // Thread 52 - 5.2 = 46.8 mm: 0.52·5.2^-0.5·46.8^-0.1·560^0.8 = 24.5204 MPa;
    // ·5.2·46.8·5.2/8·0.7/1.3 = 2088.55 N.
    carries(2088.54939, screwing(WOOD, 31, false), EC5, out);
    // 2850·0.61²·5.2/25.4 lbf/in · 46.8/25.4 in · 1.25 · 4.44822 N/lbf.
    carries(2224.24551, screwing(WOOD, 31, false), NDS, out);
    // 0.52·10^-0.5·62^-0.1·560^0.8 = 17.1915 MPa; ·10·62·0.7/1.3 = 5739.33 N.
    carries(5739.32705, screwing(COACH, 37, false), EC5, out);
    // 1800·0.61^1.5·(10/25.4)^0.75 lbf/in · 62/25.4 in · 1.25 · 4.44822 N/lbf.
    carries(5784.90688, screwing(COACH, 37, false), NDS, out);
  }

  @Test
  void the_head_and_the_washer_press_on_the_wood_under_them() {
    String through = "head pulling through";
    // 9·10.3²·(390/350)^0.8 = 1041.15 N; ·0.7/1.3.
    carries(560.620400, screwing(WOOD, 31, false), EC5, through);
    // 31 mm are more than 2.5·10.3 mm: 690·π·(10.3/25.4)·0.47²·(25.75/25.4) lbf · 4.44822 · 1.25.
    carries(1094.55637, screwing(WOOD, 31, false), NDS, through);
    // π/4·(33² - 11²) = 760.265 mm²; 3·2.2·760.265 = 5017.75 N.
    carries(5017.75179, screwing(COACH, 37, false), EC5, through);
    // C_b = (33/25.4 + 0.375)/(33/25.4) = 1.28864; 2.2·1.28864·760.265 = 2155.35 N, C_D left out.
    carries(2155.35247, screwing(COACH, 37, false), NDS, through);
  }

  @Test
  void nine_tenths_of_the_core_by_one_code_and_half_of_it_by_the_other_stand_a_pull() {
    String core = "core of the screw in tension";
    // 640·π·3.5²/4 = 6157.52 N; ·0.9/1.15 and /2.
    carries(4818.92995, screwing(WOOD, 31, false), EC5, core);
    carries(3078.76080, screwing(WOOD, 31, false), NDS, core);
    // 420·π·7.4²/4 = 18063.5 N.
    carries(14136.6752, screwing(COACH, 37, false), EC5, core);
    carries(9031.76472, screwing(COACH, 37, false), NDS, core);
  }

  @Test
  void a_slender_screw_bears_alike_at_every_angle_to_the_grain() {
    // d = 1.1·3.5 = 3.85 mm: 0.082·0.9615·390 = 30.7488 and 44.1521 MPa, β = 1.43590;
    // M_y = 0.3·640·3.85^2.6 = 6389.97 N·mm; two hinges:
    // 1.15·sqrt(2·1.43590/2.43590)·sqrt(2·6389.97·30.7488·3.85) = 1535.87 N.
    carries(1535.86785 * K, screwing(WOOD, 31, false), EC5, "screw yielding across");
  }

  @Test
  void a_stout_screw_bears_less_across_the_grain() {
    // Through 6 mm its smooth shank of 117 - 62 - 9 = 46 mm reaches in by 4 d: d = 10 mm. Softwood
    // at 70°: k_90 = 1.5; 0.082·0.9·390 = 28.782; /(1.5·sin² + cos²) = 19.9665 MPa. The piece
    // crushes: ·10·6 = 1197.99 N.
    carries(1197.99285 * K, screwing(COACH, 6, false), EC5, "screw yielding across");
    // Through 37 mm d = 1.1·7.4 = 8.14 mm: 0.082·0.9186·390 = 29.3768, k_90 = 1.4721,
    // /(1.4721·sin² + cos²) = 20.7335 MPa.
    // Hardwood at 25°: k_90 = 1.0221; 42.1818/(1.0221·sin² + cos²) = 42.0163 MPa, β = 2.02649;
    // M_y = 0.3·420·8.14^2.6 = 29376.1 N·mm; one hinge in 37 mm:
    // 1.05·20.7335·8.14·37/4.02649·(sqrt(2·2.02649·3.02649
    // + 4·2.02649·4.02649·29376.1/(20.7335·8.14·37²)) - 2.02649) = 3297.82 N.
    carries(3297.81966 * K, screwing(COACH, 37, false), EC5, "screw yielding across");
  }

  @Test
  void a_screw_that_bends_at_just_six_millimetres_still_bears_alike_at_every_angle() {
    WoodScrew six = new WoodScrew(6, 5.454545454545454, 83, 52, 12, 580, 640);
    assertEquals(6.0, 1.1 * six.root());
    // 0.082·0.94·390·6·6 = 1082.20 N crush the piece of 6 mm.
    carries(1082.20320 * K, screwing(six, 6, false), EC5, "screw yielding across");
  }

  @Test
  void the_american_table_takes_the_core_and_the_steeper_angle() {
    // Wood screw: F_e = 46.0929 and 28.5290 MPa as below 1/4 in, 3.5 mm are below 0.17 in: R_d 2.2.
    // Two hinges: 3.5²/2.2·sqrt(2·46.0929·580/(3·2.61565)) = 459.631 N; ·1.25.
    carries(574.538445, screwing(WOOD, 31, false), NDS, "screw yielding across");
    // Coach screw: 43.6798 MPa at 25° and 23.4781 at 70°; K_θ = 1 + 0.25·70/90 = 1.19444,
    // R_d = 3.82222; k_3 of one hinge in the side piece of 37 mm gives 770.636 N; ·1.25.
    carries(963.295333, screwing(COACH, 37, false), NDS, "screw yielding across");
    // A piece of 6 mm crushes: 7.4·6·23.4781/4.77778 = 218.182 N; ·1.25.
    carries(272.727817, screwing(COACH, 6, false), NDS, "screw yielding across");
  }

  @Test
  void less_than_ten_diameters_count_without_half_of_the_tip() {
    // Reach 59 mm, 5.9 D: 59 - 9/2 = 54.5 mm; 43.6798 and 23.4781 MPa, core 7.4 mm.
    CoachScrew shorter = new CoachScrew(10, 7.4, 96, 62, 9, 310, 420, COACH.washer());
    assertEquals(nds(54.5), limit(shorter), 1e-3);
    // 101 mm are more than 10 D: all of them count.
    CoachScrew longer = new CoachScrew(10, 7.4, 138, 62, 9, 310, 420, COACH.washer());
    assertEquals(nds(101), limit(longer), 1e-3);
    // At 16 mm the screw turns in its hole, and the tip is felt.
    CoachScrew small = new CoachScrew(10, 7.4, 53, 20, 9, 310, 420, COACH.washer());
    assertEquals(nds(11.5), limit(small), 1e-3);
    assertTrue(nds(11.5) < nds(16) - 1);
  }

  private static double limit(Screw screw) {
    return limit(screwing(screw, 37, false), NDS, RowForces.one(0, 300), "screw yielding across")
        .capacity();
  }

  private static double nds(double bearing) {
    return 1.25
        * NdsYield.single(
                Pad.blank(),
                7.4,
                bearing,
                37,
                43.679792,
                23.478084,
                310,
                NdsYield.Reduction.ofThreaded(10, 7.4, 70))
            .least()
            .force();
  }

  /** A screw of 8 mm with a core of 5.2 mm bends and bears as 5.72 mm do: by the rules of nails. */
  @Test
  void the_effective_diameter_chooses_between_nails_and_bolts_everywhere() {
    WoodScrew eight = new WoodScrew(8, 5.2, 83, 60, 15, 580, 640);
    Screwing through = screwing(eight, 31, false);
    assertEquals(5.72, through.effectiveDiameter(), 1e-12);
    // Its shank of 23 mm would have to reach 32 mm beyond the first piece.
    assertEquals(
        8, screwing(new WoodScrew(8, 5.2, 123, 60, 15, 580, 640), 31, false).effectiveDiameter());
    Seat seat = new Seat("rail", 200, 100, 60, 60, 90, 5);
    JointLimit end =
        Found.named(
            ScrewCapacity.utilisations(
                through, EC5, RowForces.one(0, 1e-9), List.of(seat), List.of(), true),
            "screw from the end of the rail");
    // Drilled nails at 90°: 7 d on either side; bolts ask for 7 d and 80 mm.
    assertEquals(7 * 8, end.demand(), 1e-6);
    RowForces three = new RowForces(3, 61, 0, 600, 0, 2e7, 3e7);
    // 61/8 = 7.625 d: k_ef = 0.7 + 0.625/20; 600/3^0.73125.
    assertEquals(
        600 / Math.pow(3, 0.73125),
        limit(through, EC5, three, "screw yielding across").demand(),
        1e-9);
  }

  @Test
  void end_grain_takes_two_thirds_of_the_shear_by_one_code_and_one_third_by_the_other() {
    String across = "screw yielding across";
    carries(574.538445 * 0.67, screwing(WOOD, 31, true), NDS, across);
    carries(1535.86785 / 3 * K, screwing(WOOD, 31, true), EC5, across);
  }

  @Test
  void pull_and_shear_add_as_squares_by_one_code_and_straight_by_the_other() {
    String both = "pull and shear together";
    RowForces forces = RowForces.one(1500, 700);
    // The washer holds less than the thread: (1500/5017.75)² + (700/1775.75)² = 0.244758.
    assertEquals(0.244758, limit(screwing(COACH, 37, false), EC5, forces, both).demand(), 1e-6);
    // 1500/2155.35 + 700/963.295 = 1.422614.
    JointLimit straight = limit(screwing(COACH, 37, false), NDS, forces, both);
    assertEquals(1.422614, straight.demand(), 1e-6);
    assertEquals(1, straight.capacity());
    // The head of the wood screw holds less than its thread.
    RowForces less = RowForces.one(400, 300);
    assertEquals(0.640666, limit(screwing(WOOD, 31, false), EC5, less, both).demand(), 1e-6);
    assertEquals(0.887603, limit(screwing(WOOD, 31, false), NDS, less, both).demand(), 1e-6);
  }

  @Test
  void where_no_pull_is_counted_shear_is_judged_alone_and_the_working_says_so() {
    RowForces forces = RowForces.one(400, 300);
    Screwing end = screwing(WOOD, 31, true);
    // 300/(827.006/3) = 1.088263; 300/(574.538·0.67) = 0.779341.
    JointLimit ec5 = limit(end, EC5, forces, "pull and shear together");
    assertEquals(1.088263, ec5.demand(), 1e-6);
    assertTrue(Found.remarks(ec5, "shear alone"));
    JointLimit nds = limit(end, NDS, forces, "pull and shear together");
    assertEquals(0.779341, nds.demand(), 1e-6);
    JointLimit out = limit(end, EC5, forces, "thread pulling out");
    assertEquals(0, out.capacity());
    assertTrue(Found.remarks(out, "along the grain"));
    assertTrue(Found.remarks(limit(end, NDS, forces, "thread pulling out"), "end grain"));
    JointLimit side = limit(screwing(WOOD, 31, false), EC5, forces, "pull and shear together");
    assertFalse(Found.remarks(side, "shear alone"));
  }

  @Test
  void a_thread_of_six_diameters_holds_and_a_shorter_one_does_not() {
    // Thread less its tip of 5.2 mm: 31.1 and 31.3 mm, and 6 d are 31.2 mm.
    String out = "thread pulling out";
    WoodScrew less = new WoodScrew(5.2, 3.5, 83, 36.3, 10.3, 580, 640);
    WoodScrew more = new WoodScrew(5.2, 3.5, 83, 36.5, 10.3, 580, 640);
    RowForces forces = RowForces.one(400, 300);
    assertEquals(0, limit(screwing(less, 31, false), EC5, forces, out).capacity());
    // 0.52·5.2^-0.5·31.3^-0.1·560^0.8·5.2·31.3·0.65·0.7/1.3 = 1454.164 N.
    carries(1454.16399, screwing(more, 31, false), EC5, out);
  }

  @Test
  void three_screws_share_a_pull_by_their_effective_number() {
    RowForces three = new RowForces(3, 41, 900, 0, 0, 2e7, 3e7);
    Screwing screwing = screwing(COACH, 37, false);
    // 900/3^0.9 = 334.837 N and 900/3 = 300 N.
    assertEquals(334.837, limit(screwing, EC5, three, "thread pulling out").demand(), 1e-3);
    assertEquals(300, limit(screwing, NDS, three, "thread pulling out").demand(), 1e-12);
  }
}
