package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/** A tenon in a mortise that is open at the end of its post, and a rail left proud of the post. */
class OpenMortiseTest {

  private static final String HORN = "horn of the post shearing off";
  private static final String LIFT = "rail lifting out of its open mortise";
  private static final JointForces UP = new JointForces(0, -300, 150, -2e4, 0, 0);
  private static final JointForces DOWN = new JointForces(0, 300, 150, 2e4, 0, 0);

  private static JointSetting setting(double above) {
    return new JointSetting(
        Samples.MEMBERS,
        FaceGrain.TANGENTIAL,
        FaceGrain.RADIAL,
        Samples.BEECH,
        Samples.FIR,
        Glue.PVA,
        above,
        300,
        90);
  }

  /** Without a shoulder above: 98 mm of tenon over 22 mm of shoulder. */
  private static MortiseAndTenon open(Fit fit) {
    return new MortiseAndTenon(98, 16, 50, 22, 0, 1, false, Optional.empty(), fit);
  }

  private static Map<String, JointLimit> limits(Joint joint, JointSetting s, JointForces forces) {
    Map<String, JointLimit> out = new TreeMap<>();
    JointCapacities.utilisations(joint, s, Samples.strength(Samples.PARTIAL), forces, false)
        .forEach(limit -> out.put(limit.failure(), limit));
    return out;
  }

  @Test
  void no_horn_is_left_to_shear_off_and_the_glue_holds_the_rail_down() {
    Map<String, JointLimit> up = limits(open(new Fit.Glued()), setting(0), UP);
    assertFalse(up.containsKey(HORN));
    JointLimit lift = up.get(LIFT);
    assertEquals(300, lift.demand(), 0);
    assertEquals(up.get("withdrawal of the glued cheeks").capacity(), lift.capacity(), 1e-9);
    Map<String, JointLimit> down = limits(open(new Fit.Glued()), setting(0), DOWN);
    assertTrue(down.containsKey(HORN));
    assertEquals(0, down.get(LIFT).utilisation(), 0);
  }

  @Test
  void nothing_holds_a_dry_tenon_down_and_pegs_hold_a_pegged_one() {
    assertEquals(
        Double.POSITIVE_INFINITY,
        limits(open(new Fit.Dry(0)), setting(0), UP).get(LIFT).utilisation());
    Map<String, JointLimit> pegged = limits(open(Samples.pegged(false, 8, 0)), setting(0), UP);
    assertEquals(
        pegged.get("pegs yielding in double shear").capacity(),
        pegged.get("pegs holding the rail down in its open mortise").capacity(),
        1e-9);
    assertFalse(pegged.containsKey(LIFT));
  }

  @Test
  void the_cheeks_of_an_open_mortise_are_tied_at_one_end_only() {
    // Post 56: cheeks (56 - 16)/2 = 20 mm; tension across the grain 0.25 MPa.
    String cheeks = "cheek of the mortise splitting off";
    assertEquals(
        0.25 * 20 * (98 + 20),
        limits(open(new Fit.Glued()), setting(0), UP).get(cheeks).capacity(),
        1e-9);
    assertEquals(
        0.25 * 20 * (98 + 40),
        limits(open(new Fit.Glued()), setting(9), UP).get(cheeks).capacity(),
        1e-9);
  }

  @Test
  void dry_edges_do_not_hold_in_an_open_mortise_and_pegs_turn_alone() {
    JointSetting closed = setting(9);
    Pad pad = Pad.blank();
    Joint dry = open(new Fit.Dry(0.2));
    assertTrue(JointStiffness.of(dry, closed, pad).mean().rotInPlane() > 0);
    assertEquals(0, JointStiffness.of(dry, setting(0), pad).mean().rotInPlane(), 0);
    Joint pegged = open(Samples.pegged(false, 8, 0));
    double before = JointStiffness.of(pegged, closed, pad).mean().rotInPlane();
    double after = JointStiffness.of(pegged, setting(0), pad).mean().rotInPlane();
    assertTrue(after > 0 && after < before, after + " of " + before);
  }

  @Property(tries = 100)
  void a_rail_left_proud_is_never_stiffer_nor_its_glue_stronger(
      @ForAll @DoubleRange(min = 0, max = 20) double proud,
      @ForAll @DoubleRange(min = 0.1, max = 4) double more) {
    Joint joint =
        new MortiseAndTenon(70, 16, 50, 26, 0, 1, false, Optional.empty(), new Fit.Glued());
    JointSetting less = setting(24 - proud).leftProud(proud);
    JointSetting further = setting(Math.max(0, 24 - proud - more)).leftProud(proud + more);
    Pad pad = Pad.blank();
    assertTrue(
        JointStiffness.of(joint, further, pad)
            .mean()
            .nowhereStifferThan(JointStiffness.of(joint, less, pad).mean()));
    String glue = "glue line under moment";
    assertTrue(
        limits(joint, further, UP).get(glue).capacity()
            < limits(joint, less, UP).get(glue).capacity());
    assertEquals(
        limits(joint, further, DOWN).get(glue).capacity(),
        limits(joint, less, DOWN).get(glue).capacity(),
        1e-9);
  }
}
