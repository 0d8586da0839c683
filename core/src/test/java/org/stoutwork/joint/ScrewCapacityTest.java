package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Fastener;
import org.stoutwork.fastener.Nail;
import org.stoutwork.fastener.Washer;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

class ScrewCapacityTest {

  private static final CoachScrew COACH =
      new CoachScrew(10, 7.5, 100, 60, 7, 310, 400, new Washer(30, 11, 2.5));
  private static final WoodScrew WOOD = new WoodScrew(5, 3.4, 70, 42, 10, 550, 700);

  private static Screwing screwing(Fastener screw, boolean endGrain, double hole) {
    JointStrength s = Samples.strength(Samples.PARTIAL);
    return new Screwing(screw, 32, s.rail(), s.post(), 90, 0, endGrain, hole);
  }

  private static double capacity(
      Fastener screw, boolean endGrain, StrengthFamily family, String failure) {
    return ScrewCapacity.utilisations(
            screwing(screw, endGrain, screw.diameter()), family, 500, 300, false)
        .stream()
        .filter(limit -> limit.failure().equals(failure))
        .findFirst()
        .orElseThrow()
        .capacity();
  }

  @Test
  void both_families_judge_both_screws_and_print_their_workings() {
    for (StrengthFamily family : List.of(Samples.PARTIAL, Samples.ALLOWABLE)) {
      for (Fastener screw : List.of(COACH, WOOD)) {
        List<JointLimit> limits =
            ScrewCapacity.utilisations(
                screwing(screw, false, screw.diameter()), family, 500, 300, true);
        assertEquals(6, limits.size());
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
    assertEquals(68, coach.penetration());
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
  void a_slot_lets_the_screw_slip_half_its_play() {
    assertEquals(4, screwing(COACH, false, 18).freeSlip(Pad.blank()));
    assertEquals(0, screwing(COACH, false, 10).freeSlip(Pad.blank()));
  }

  @Test
  void a_screw_too_short_for_its_top_is_refused() {
    WoodScrew stub = new WoodScrew(5, 3.4, 30, 20, 10, 550, 700);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> screwing(stub, false, 5))
            .getMessage()
            .contains("does not reach through 32.0 mm"));
    assertThrows(IllegalArgumentException.class, () -> screwing(new Nail(3, 60, 6, 600), false, 3));
  }
}
