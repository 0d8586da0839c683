package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.COACH;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.SOFT;
import static org.stoutwork.joint.ByHand.WOOD;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.screwed.LayerSlip;
import org.stoutwork.joint.screwed.LayersForces;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.working.Pad;

/** Length, hole and slip of screws, worked by hand. */
class ScrewRulesByHandTest {

  private static Screwing into(TimberStrength point, Screw screw, double pilot) {
    return new Screwing(
        screw, 37, SOFT, point, 70, 25, false, ScrewHole.round(screw.diameter()), pilot);
  }

  private static List<JointLimit> limits(Screwing screwing) {
    RowForces forces = RowForces.one(400, 300);
    return ScrewCapacity.utilisations(screwing, EC5, forces, List.of(), List.of(), true);
  }

  private static void hole(double off, double mayBeOff, Screwing screwing) {
    JointLimit limit = Found.named(limits(screwing), "hole drilled for the screw");
    assertEquals(off, limit.demand(), 1e-12);
    assertEquals(mayBeOff, limit.capacity(), 1e-12);
  }

  @Test
  void a_coach_screw_reaches_in_by_four_diameters_and_a_wood_screw_by_six() {
    JointLimit coach = Found.named(limits(into(HARD, COACH, 7)), "reach of the screw");
    assertEquals(40, coach.demand());
    // 117 − 37 less a tip of 9 mm.
    assertEquals(71, coach.capacity());
    JointLimit wood = Found.named(limits(into(HARD, WOOD, 3)), "reach of the screw");
    assertEquals(31.2, wood.demand(), 1e-12);
    assertEquals(46, wood.capacity());
  }

  @Test
  void the_hole_of_a_coach_screw_is_a_part_of_its_shank() {
    // At 0.61 from 0.65 to 0.85 of 10 mm: 7.5 ± 1 mm; at 0.47 from 0.4 to 0.7: 5.5 ± 1.5 mm.
    hole(0.4, 1, into(HARD, COACH, 7.1));
    hole(0.7, 1.5, into(SOFT, COACH, 6.2));
    hole(1.6, 1.5, into(SOFT, COACH, 3.9));
  }

  @Test
  void the_hole_of_a_wood_screw_is_a_part_of_its_core() {
    // At 0.61 from 0.8 to 1 of 3.5 mm: 3.15 ± 0.35 mm.
    hole(0.15, 0.35, into(HARD, WOOD, 3));
    // At 0.47 none need be drilled; at most 3.5 mm.
    hole(3.6, 3.5, into(SOFT, WOOD, 3.6));
    hole(0, 3.5, into(SOFT, WOOD, 0));
  }

  @Test
  void screws_added_to_a_joint_bring_their_rules_and_screws_that_only_press_bring_nothing_else() {
    Seat seat = new Seat("rail", 54, 31, 47, 39, 30, 3.7);
    Limits added = new Limits(false);
    ScrewCapacity.add(
        added, into(HARD, COACH, 7), EC5, RowForces.one(0, 600), List.of(seat), List.of());
    assertEquals(71, Found.named(added.list(), "reach of the screw").capacity());
    assertEquals(
        53.5154, Found.named(added.list(), "screw from the end of the rail").demand(), 1e-4);
    assertTrue(Found.named(added.list(), "screw yielding across").utilisation() > 0);
    Limits pressing = new Limits(false);
    ScrewCapacity.addRules(pressing, into(HARD, COACH, 7), EC5, List.of(seat), List.of());
    // No shear: the unloaded distance, max((1 + 6·0.5)·10, 40) mm.
    assertEquals(40, Found.named(pressing.list(), "screw from the end of the rail").demand(), 1e-9);
    assertFalse(pressing.list().stream().anyMatch(l -> l.nature() != JointLimit.Nature.RULE));
  }

  @Test
  void a_screw_slips_by_its_diameter_and_the_density_of_both_pieces() {
    // sqrt(420·650) = 522.494 kg/m³; 522.494^1.5·10/23 = 5192.71 N/mm.
    assertEquals(5192.710960, into(HARD, COACH, 7).slipModulus(Pad.blank(), 420, 650), 1e-5);
  }

  @Test
  void screws_between_layers_carry_the_slip_and_no_pull() {
    // Two sheets 600 by 18 mm of 4000 MPa, screws of 1800 N/mm each 37.5 mm, over 1600 mm, 600 N.
    double ea = 4000.0 * 600 * 18;
    LayerSlip slip = new LayerSlip(ea, ea, ea * 18 * 18 / 6, 18, 37.5, 1600);
    LayersForces forces = new LayersForces(slip, 1800, 600);
    assertEquals(653.89, forces.shearOfOne(Pad.blank(), EC5, into(HARD, WOOD, 3)), 0.01);
    assertEquals(0, forces.pullOfOne(Pad.blank(), EC5));
  }
}
