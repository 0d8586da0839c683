package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.COACH;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.NDS;
import static org.stoutwork.joint.ByHand.SOFT;
import static org.stoutwork.joint.ByHand.WOOD;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/** What is left under heads and washers beside holes and slots. */
class HoleUnderHeadTest {

  private static final String THROUGH = "head pulling through";

  private static List<JointLimit> limits(Screw screw, StrengthFamily family, ScrewHole hole) {
    Screwing screwing = new Screwing(screw, 37, SOFT, HARD, 70, 25, false, hole, 3);
    RowForces forces = RowForces.one(400, 300);
    return ScrewCapacity.utilisations(screwing, family, forces, List.of(), List.of(), true);
  }

  private static double through(Screw screw, StrengthFamily family, ScrewHole hole) {
    return Found.named(limits(screw, family, hole), THROUGH).capacity();
  }

  @Test
  void a_head_over_a_slot_is_held_by_the_wood_beside_it() {
    // Head 10.3 mm: 83.3229 mm². A slot 5.2 × 9 mm: 5.2·3.8 + π/4·5.2² = 40.9972 mm², left
    // 42.3257; over a hole of 5.2 mm, 62.0857 mm²: 0.681730 of 560.620 N and of 1094.56 N.
    ScrewHole slot = new ScrewHole(5.2, 9);
    assertEquals(0.681730 * 560.620400, through(WOOD, EC5, slot), 1e-3);
    assertEquals(0.681730 * 1094.55637, through(WOOD, NDS, slot), 1e-3);
  }

  @Test
  void a_washer_over_a_long_slot_keeps_what_a_strip_right_across_it_leaves() {
    // Washer 33 mm over a slot 10 mm wide: π/4·33² = 855.299 mm², strip
    // (10·√(33² - 10²) + 33²·atan(10/√(33² - 10²)))/2 = 324.878 mm², left 530.421; 3·2.2·530.421.
    assertEquals(3500.779, through(COACH, EC5, new ScrewHole(10, 60)), 0.01);
    assertEquals(
        through(COACH, NDS, new ScrewHole(10, 60)), through(COACH, NDS, new ScrewHole(10, 90)));
  }

  @Test
  void a_slot_as_long_as_wide_is_a_round_hole() {
    double round = Heads.area(Pad.blank(), 31, ScrewHole.round(12.5));
    assertEquals(round, Heads.area(Pad.blank(), 31, new ScrewHole(12.5, 12.5 + 1e-9)), 1e-6);
    assertThrows(IllegalArgumentException.class, () -> new ScrewHole(9, 8.9));
    assertThrows(IllegalArgumentException.class, () -> limits(WOOD, EC5, ScrewHole.round(10.3)));
  }

  /** The true area by small steps, the screw anywhere in its slot. */
  @Property(tries = 60)
  void the_wood_that_counts_is_never_more_than_there_is(
      @ForAll @DoubleRange(min = 3, max = 20) double width,
      @ForAll @DoubleRange(min = 0, max = 40) double longer,
      @ForAll @DoubleRange(min = 0.3, max = 20) double wider,
      @ForAll @DoubleRange(min = 0, max = 1) double off) {
    ScrewHole slot = new ScrewHole(width, width + longer);
    double outer = width + wider;
    int n = 300;
    double step = outer / n;
    double half = longer / 2;
    double shift = off * half;
    double there = 0;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double x = -outer / 2 + (i + 0.5) * step;
        double y = -outer / 2 + (k + 0.5) * step;
        double fromAxis = Math.max(0, Math.abs(x + shift) - half);
        boolean hole = Math.hypot(fromAxis, y) < width / 2;
        there += Math.hypot(x, y) < outer / 2 && !hole ? step * step : 0;
      }
    }
    double counted = Heads.area(Pad.blank(), outer, slot);
    assertTrue(counted > 0, counted + " mm²");
    assertTrue(counted <= there + outer * step, counted + " of " + there);
  }

  @Property
  void no_capacity_rises_when_a_hole_grows(
      @ForAll @DoubleRange(min = 0, max = 1) double first,
      @ForAll @DoubleRange(min = 0, max = 1) double second,
      @ForAll @DoubleRange(min = 0, max = 30) double longer,
      @ForAll @DoubleRange(min = 0, max = 20) double longerStill) {
    for (Screw screw : List.<Screw>of(COACH, WOOD)) {
      double room = 0.99 * screw.across() - screw.diameter();
      double narrow = screw.diameter() + Math.min(first, second) * room;
      double wide = screw.diameter() + Math.max(first, second) * room;
      ScrewHole small = new ScrewHole(narrow, narrow + longer);
      ScrewHole large = new ScrewHole(wide, Math.max(wide, narrow + longer) + longerStill);
      for (StrengthFamily family : List.of(EC5, NDS)) {
        List<JointLimit> before = limits(screw, family, small);
        List<JointLimit> after = limits(screw, family, large);
        for (JointLimit limit : before) {
          JointLimit then = Found.named(after, limit.failure());
          assertTrue(then.capacity() <= limit.capacity() * (1 + 1e-12), limit.failure());
          assertTrue(then.utilisation() >= limit.utilisation() * (1 - 1e-12), limit.failure());
        }
        if (large.length() > small.length() + 0.1 && small.length() < 0.9 * screw.across()) {
          assertTrue(through(screw, family, large) < through(screw, family, small));
        }
      }
    }
  }
}
