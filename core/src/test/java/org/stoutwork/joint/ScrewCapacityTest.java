package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.LayerSlip;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

class ScrewCapacityTest {

  private static final CoachScrew COACH = new CoachScrew(10, 7.5, 100, 60, 7, 310, 400, 30);
  private static final WoodScrew WOOD = new WoodScrew(5, 3.4, 70, 42, 10, 550, 700);

  private static Screwing screwing(Screw screw, boolean endGrain, double hole) {
    JointStrength s = Samples.strength(Samples.PARTIAL);
    return new Screwing(screw, 32, s.rail(), s.post(), 90, 0, endGrain, ScrewHole.round(hole), 2.2);
  }

  private static double capacity(
      Screw screw, boolean endGrain, StrengthFamily family, String failure) {
    return limits(screwing(screw, endGrain, screw.diameter()), family, RowForces.one(500, 300))
        .stream()
        .filter(limit -> limit.failure().equals(failure))
        .findFirst()
        .orElseThrow()
        .capacity();
  }

  private static List<JointLimit> limits(
      Screwing screwing, StrengthFamily family, RowForces forces) {
    return ScrewCapacity.utilisations(screwing, family, forces, List.of(), List.of(), true);
  }

  @Test
  void both_families_judge_both_screws_and_print_their_workings() {
    for (StrengthFamily family : List.of(Samples.PARTIAL, Samples.ALLOWABLE)) {
      for (Screw screw : List.<Screw>of(COACH, WOOD)) {
        List<JointLimit> limits =
            limits(screwing(screw, false, screw.diameter()), family, RowForces.one(500, 300));
        assertEquals(7, limits.size());
        for (JointLimit limit : limits) {
          assertTrue(Double.isFinite(limit.utilisation()), limit.failure());
          assertEquals(limit.utilisation(), limit.working().result().orElseThrow());
        }
      }
    }
  }

  @Test
  void the_core_not_the_shank_yields_and_the_thread_without_its_tip_holds() {
    Screwing coach = screwing(COACH, false, 10);
    assertEquals(68, coach.reach());
    assertEquals(60, coach.thread());
    assertEquals(33, screwing(WOOD, false, 5).thread());
  }

  @Test
  void end_grain_holds_three_quarters_of_a_coach_screw_and_nothing_of_a_wood_screw() {
    String out = "thread pulling out";
    double side = capacity(COACH, false, Samples.ALLOWABLE, out);
    assertEquals(0.75 * side, capacity(COACH, true, Samples.ALLOWABLE, out), 1e-9 * side);
    assertEquals(0, capacity(WOOD, true, Samples.ALLOWABLE, out));
    assertEquals(0, capacity(COACH, true, Samples.PARTIAL, out));
    assertTrue(capacity(COACH, false, Samples.PARTIAL, out) > 2000);
  }

  @Test
  void a_screw_too_short_for_its_top_is_refused() {
    WoodScrew stub = new WoodScrew(5, 3.4, 30, 20, 10, 550, 700);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> screwing(stub, false, 5))
            .getMessage()
            .contains("does not reach through 32.0 mm"));
  }

  private static JointLimit named(List<JointLimit> limits, String failure) {
    return limits.stream()
        .filter(limit -> limit.failure().equals(failure))
        .findFirst()
        .orElseThrow(() -> new AssertionError(limits.stream().map(JointLimit::failure).toList()));
  }

  private static List<JointLimit> seated(StrengthFamily family, RowForces forces, Seat point) {
    return ScrewCapacity.utilisations(
        screwing(COACH, false, 10), family, forces, List.of(), List.of(point), true);
  }

  private static Seat seat(double end, double edge, double spacing) {
    return new Seat("rail", end, edge, Double.POSITIVE_INFINITY, spacing, 90, 6.8);
  }

  @Test
  void a_screw_too_near_an_edge_fails_by_name_with_what_is_given_and_needed() {
    JointLimit near =
        named(
            seated(Samples.PARTIAL, RowForces.one(0, 1e-9), seat(200, 26, 90)),
            "screw from the edge of the rail");
    assertEquals(26, near.capacity());
    assertEquals(30, near.demand(), 1e-6);
    assertTrue(near.utilisation() > 1);
  }

  @Test
  void the_edge_that_is_needed_grows_from_unloaded_to_loaded_with_the_use_of_the_screw() {
    RowForces none = RowForces.one(0, 1e-9);
    RowForces much = RowForces.one(0, 1e9);
    String edge = "screw from the edge of the rail";
    assertEquals(40, named(seated(Samples.PARTIAL, much, seat(200, 26, 90)), edge).demand(), 1e-9);
    assertEquals(
        15, named(seated(Samples.ALLOWABLE, none, seat(200, 26, 90)), edge).demand(), 1e-6);
    assertEquals(
        40, named(seated(Samples.ALLOWABLE, much, seat(200, 26, 90)), edge).demand(), 1e-9);
  }

  @Test
  void pulled_screws_have_distances_of_their_own_and_only_when_pulled() {
    List<JointLimit> pulled = seated(Samples.PARTIAL, RowForces.one(700, 300), seat(60, 45, 44));
    assertEquals(100, named(pulled, "pulled screw from the end of the rail").demand());
    assertEquals(50, named(pulled, "spacing of pulled screws across the grain").demand());
    List<JointLimit> idle = seated(Samples.PARTIAL, RowForces.one(0, 300), seat(60, 45, 44));
    assertTrue(idle.stream().noneMatch(limit -> limit.failure().contains("pulled")));
  }

  @Test
  void a_row_along_its_force_shares_it_unevenly_and_across_it_alike() {
    RowForces along = new RowForces(4, 55, 0, 2000, 0, 3e7, 2e7);
    RowForces across = new RowForces(4, 55, 0, 0, 2000, 3e7, 2e7);
    String yielding = "screw yielding across";
    for (StrengthFamily family : List.of(Samples.PARTIAL, Samples.ALLOWABLE)) {
      double one = named(limits(screwing(COACH, false, 10), family, across), yielding).demand();
      double uneven = named(limits(screwing(COACH, false, 10), family, along), yielding).demand();
      assertEquals(500, one, 1e-9);
      assertTrue(uneven > 500 && uneven < 2000, family.title() + " " + uneven);
    }
    assertEquals(
        2000 / (Math.pow(4, 0.9) * Math.pow(55.0 / 130, 0.25)),
        named(limits(screwing(COACH, false, 10), Samples.PARTIAL, along), yielding).demand(),
        1e-9);
  }

  @Test
  void a_stout_screw_near_an_end_loses_strength_by_the_geometry_factor() {
    String yielding = "screw yielding across";
    double far =
        named(seated(Samples.ALLOWABLE, RowForces.one(0, 300), seat(90, 60, 90)), yielding)
            .capacity();
    double near =
        named(seated(Samples.ALLOWABLE, RowForces.one(0, 300), seat(30, 60, 90)), yielding)
            .capacity();
    assertEquals(0.75, near / far, 1e-12);
  }

  @Test
  void a_screw_between_two_sheets_carries_what_the_worked_example_says() {
    // Two sheets 600 by 18 mm of 4000 MPa, four rows of screws of 1800 N/mm each 150 mm, over
    // 1600 mm, 600 N: γ = 0.22372, a = 14.709 mm, EI = 4.8917 kN·m².
    double ea = 4000.0 * 600 * 18;
    double own = 2 * 4000.0 * 600 * 18 * 18 * 18 / 12;
    LayerSlip slip = new LayerSlip(ea, ea, own, 18, 37.5, 1600);
    assertEquals(653.89, slip.force(Pad.blank(), 1800, 600), 0.01);
    LayerSlip turned = new LayerSlip(0.4 * ea, 1.3 * ea, own, 18, 37.5, 1600);
    LayerSlip over = new LayerSlip(1.3 * ea, 0.4 * ea, own, 18, 37.5, 1600);
    assertEquals(turned.force(Pad.blank(), 1800, 600), over.force(Pad.blank(), 1800, 600), 1e-9);
  }
}
