package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.joint.tenon.Mortises;
import org.stoutwork.section.PiercedSection.Hole;
import org.stoutwork.section.Rectangle;

class JointRefusalTest {

  private static MortiseAndTenon tenon(double thickness, double length, boolean through, Fit fit) {
    return new MortiseAndTenon(80, thickness, length, 20, 0, 1, through, Optional.empty(), fit);
  }

  @Test
  void a_tenon_thicker_than_its_leg_is_refused() {
    Joint.Members thinLeg = new Joint.Members(120, 45, 70, 30);
    JointFault fault =
        assertThrows(
            JointFault.class, () -> tenon(32, 50, false, new Fit.Glued()).requireFits(thinLeg));
    assertEquals("tenon thickness", fault.part());
    assertEquals(32, fault.value());
    assertEquals(28, fault.limit());
    assertEquals(
        "tenon thickness 32\u00a0mm: at most 28\u00a0mm, what the 30 mm post leaves with a cheek"
            + " on either side",
        fault.getMessage());
  }

  @Test
  void a_tenon_too_thick_for_rail_and_leg_names_the_tighter_limit_first() {
    Joint.Members thinRail = new Joint.Members(120, 27, 70, 30);
    JointFault fault =
        assertThrows(
            JointFault.class, () -> tenon(32, 50, false, new Fit.Glued()).requireFits(thinRail));
    assertEquals(27, fault.limit());
    assertEquals(
        "tenon thickness 32\u00a0mm: at most 27\u00a0mm, the thickness of the rail; and at most"
            + " 28\u00a0mm, what the 30 mm post leaves with a cheek on either side",
        fault.getMessage());
  }

  @Test
  void a_blind_tenon_longer_than_the_leg_is_deep_is_refused() {
    JointFault fault =
        assertThrows(
            JointFault.class,
            () -> tenon(16, 70, false, new Fit.Glued()).requireFits(Samples.MEMBERS));
    assertEquals("tenon length", fault.part());
    assertEquals(69, fault.limit());
  }

  @Test
  void a_through_tenon_that_does_not_come_through_is_refused() {
    JointFault fault =
        assertThrows(
            JointFault.class,
            () -> tenon(16, 69, true, new Fit.Glued()).requireFits(Samples.MEMBERS));
    assertTrue(fault.getMessage().contains("does not come through"));
  }

  @Test
  void a_peg_beyond_the_tenon_is_refused() {
    JointFault fault =
        assertThrows(JointFault.class, () -> tenon(16, 25, false, Samples.pegged(false, 8, 1)));
    assertEquals("distance of the peg from the shoulder", fault.part());
    assertEquals(22, fault.value());
    assertEquals(21, fault.limit());
  }

  @Test
  void a_drawbore_offset_that_breaks_its_peg_is_refused() {
    JointFault fault = assertThrows(JointFault.class, () -> Samples.pegged(false, 8, 2.1));
    assertEquals("drawbore offset", fault.part());
    assertEquals(2, fault.limit());
  }

  @Test
  void tenon_and_haunch_higher_than_the_rail_are_refused() {
    MortiseAndTenon joint =
        new MortiseAndTenon(
            80,
            16,
            50,
            20,
            0,
            1,
            false,
            Optional.of(new MortiseAndTenon.Haunch(21, 12)),
            new Fit.Glued());
    JointFault fault = assertThrows(JointFault.class, () -> joint.requireFits(Samples.MEMBERS));
    assertEquals("haunch height", fault.part());
    assertEquals(20, fault.limit());
  }

  /** From the front face of a leg of 70 by 56, 45 deep and 14 wide; from the side 50 and 12. */
  @Test
  void mortises_that_meet_are_not_taken_out_twice() {
    Rectangle leg = new Rectangle(70, 56);
    Hole first = new Hole(-35, 10, -7, 7);
    Hole second = new Hole(-1, 11, -28, 22);
    assertEquals(
        70 * 56 - 14 * 45 - 12 * 50 + 14 * 11,
        Mortises.remaining(leg, List.of(first, second)),
        1e-9);
    assertEquals(0, Mortises.remaining(leg, List.of(new Hole(-35, 35, -28, 28))));
  }

  /** Else the cheeks of mortises and the wood beside glue would go unjudged in silence. */
  @Test
  void a_wood_without_tension_strength_across_the_grain_is_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new TimberStrength(22, 13, 0, 18, 2.2, 2.4, 8, 390, 0.47, false, 10500, 70));
  }

  @Property
  void nothing_grows_when_a_mortise_grows(
      @ForAll @DoubleRange(min = 5, max = 20) double width,
      @ForAll @DoubleRange(min = 5, max = 69) double depth,
      @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
    Rectangle leg = new Rectangle(75, 56);
    Hole other = Hole.about(3, -13, 12, 30);
    double small = Mortises.remaining(leg, List.of(Hole.about(0, 0, depth, width), other));
    double wider = Mortises.remaining(leg, List.of(Hole.about(0, 0, depth, width + more), other));
    double deeper = Mortises.remaining(leg, List.of(Hole.about(0, 0, depth + more, width), other));
    assertTrue(wider < small && deeper < small);
  }

  @Property
  void every_tenon_that_is_not_refused_has_levers_that_can_be_reckoned_with(
      @ForAll @DoubleRange(min = 60, max = 230) double depth,
      @ForAll @DoubleRange(min = 0.08, max = 1) double height,
      @ForAll @DoubleRange(min = 0, max = 1) double below,
      @ForAll @DoubleRange(min = -9e5, max = 9e5) double moment) {
    double h = Math.max(9, height * depth);
    double shoulder = below * Math.max(0, depth - h);
    Joint.Members members = new Joint.Members(depth, 45, 70, 56);
    for (Fit fit : List.of(new Fit.Glued(), Samples.pegged(false, 8, 0))) {
      Joint joint = new MortiseAndTenon(h, 16, 50, shoulder, 0, 1, false, Optional.empty(), fit);
      try {
        joint.requireFits(members);
      } catch (JointFault refused) {
        continue;
      }
      JointCapacities.utilisations(
              joint,
              Samples.setting(members, Glue.PVA),
              Samples.strength(Samples.PARTIAL),
              new JointForces(300, 400, 0, moment, 0, 0),
              false)
          .forEach(limit -> assertTrue(limit.demand() >= 0, limit.failure()));
    }
  }

  /** As high and as thick as its rail: nothing stops it at the post. */
  @Test
  void a_tenon_that_leaves_no_shoulder_is_refused_by_its_thickness() {
    Joint.Members members = new Joint.Members(130, 20, 90, 60);
    MortiseAndTenon bare =
        new MortiseAndTenon(130, 20, 45, 0, 0, 1, false, Optional.empty(), new Fit.Glued());
    JointFault fault = assertThrows(JointFault.class, () -> bare.requireFits(members));
    assertTrue(fault.getMessage().contains("tenon thickness"), fault.getMessage());
    new MortiseAndTenon(130, 18, 45, 0, 0, 1, false, Optional.empty(), new Fit.Glued())
        .requireFits(members);
  }
}
