package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.bolted.BedBolt;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.GlueClass;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.stiffness.SpringSet;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

class JointStiffnessTest {

  private static final Pad PAD = Pad.blank();

  private static JointStiffness glued(double h, double t, double l, Glue glue) {
    Joint joint = new MortiseAndTenon(h, t, l, 15, 0, 1, false, Optional.empty(), new Fit.Glued());
    return JointStiffness.of(joint, Samples.setting(Samples.MEMBERS, glue), PAD);
  }

  @Test
  void every_kind_of_joint_has_a_range_a_reason_and_a_working_with_the_same_numbers() {
    for (Joint joint : Samples.all()) {
      RecordingPad kept = Pad.recording();
      JointStiffness recorded = JointStiffness.of(joint, Samples.setting(), kept);
      assertEquals(JointStiffness.of(joint, Samples.setting(), PAD), recorded, joint.title());
      assertTrue(recorded.low().nowhereStifferThan(recorded.mean()), joint.title());
      assertTrue(recorded.mean().nowhereStifferThan(recorded.high()), joint.title());
      assertFalse(recorded.reason().isBlank(), joint.title());
      kept.working().lines().forEach(line -> assertFalse(line.text().isBlank()));
      assertTrue(kept.working().lines().size() > 3, joint.title());
    }
  }

  @Property
  void longer_higher_and_thicker_glued_tenons_are_never_softer(
      @ForAll @DoubleRange(min = 30, max = 80) double h,
      @ForAll @DoubleRange(min = 8, max = 24) double t,
      @ForAll @DoubleRange(min = 20, max = 60) double l,
      @ForAll @DoubleRange(min = 0.1, max = 8) double more) {
    double base = glued(h, t, l, Glue.PVA).low().rotInPlane();
    assertTrue(glued(h + more, t, l, Glue.PVA).low().rotInPlane() > base);
    assertTrue(glued(h, t, l + more, Glue.PVA).low().rotInPlane() > base);
    assertTrue(glued(h, t + more, l, Glue.PVA).high().rotInPlane() > 0);
  }

  @Property
  void without_glue_the_cheeks_do_nothing_and_with_rigid_glue_wood_alone_gives(
      @ForAll @DoubleRange(min = 40, max = 80) double h,
      @ForAll @DoubleRange(min = 25, max = 60) double l) {
    Glue none = new Glue("none", 0.1, 0, GlueClass.D1, false);
    Glue usual = Glue.PVA;
    Glue rigid = new Glue("rigid", 0.1, 1e12, GlueClass.STRUCTURAL_I, false);
    assertEquals(0, glued(h, 16, l, none).low().rotInPlane());
    double limit = glued(h, 16, l, rigid).low().rotInPlane();
    assertTrue(limit < Double.POSITIVE_INFINITY);
    assertTrue(glued(h, 16, l, usual).low().rotInPlane() < limit);
    assertTrue(glued(h, 16, l, usual).low().rotInPlane() > 0.7 * limit);
  }

  @Property
  void a_joint_twice_as_large_in_all_sizes_turns_with_eight_times_the_stiffness(
      @ForAll @DoubleRange(min = 1.1, max = 3) double scale) {
    double cube = scale * scale * scale;
    double dry = TenonSpring.dry(PAD, 1, 16, 50, 12205, 774);
    double dryLarge = TenonSpring.dry(PAD, 1, 16 * scale, 50 * scale, 12205, 774);
    assertEquals(cube, dryLarge / dry, 1e-9);
    double shoulder = ShoulderSpring.of(PAD, 120, 45, 80, 16, 18, 1174).rotation();
    double large =
        ShoulderSpring.of(PAD, 120 * scale, 45 * scale, 80 * scale, 16 * scale, 18 * scale, 1174)
            .rotation();
    assertEquals(cube, large / shoulder, 1e-9);
  }

  @Property
  void the_pressed_half_plane_of_an_isotropic_body_has_its_own_modulus(
      @ForAll @DoubleRange(min = 500, max = 20000) double e,
      @ForAll @DoubleRange(min = 0, max = 0.45) double nu) {
    double g = e / (2 * (1 + nu));
    TimberStiffness body = new TimberStiffness(e, e, e, g, g, g, nu, nu, 600);
    double found = ShoulderSpring.halfPlane(PAD, body, FaceGrain.RADIAL);
    assertEquals(e, found, 1e-9 * e);
  }

  @Test
  void a_slender_tenon_is_as_good_as_a_pin() {
    double thick = glued(60, 15, 45, Glue.PVA).low().rotInPlane();
    Joint wire =
        new MortiseAndTenon(0.5, 0.5, 45, 59.75, 0, 1, false, Optional.empty(), new Fit.Glued());
    double thin = JointStiffness.of(wire, Samples.setting(), PAD).low().rotInPlane();
    assertTrue(thin < 1e-4 * thick, "thin " + thin);
  }

  @Test
  void a_joint_with_unequal_shoulders_counts_the_weaker_for_the_mean_and_the_stronger_for_high() {
    MortiseAndTenon low =
        new MortiseAndTenon(80, 16, 50, 10, 0, 1, false, Optional.empty(), new Fit.Glued());
    MortiseAndTenon turned =
        new MortiseAndTenon(80, 16, 50, 30, 0, 1, false, Optional.empty(), new Fit.Glued());
    assertEquals(
        JointStiffness.of(low, Samples.setting(), PAD),
        JointStiffness.of(turned, Samples.setting(), PAD));
  }

  @Property
  void two_bolts_on_one_lever_are_one_bolt_of_twice_the_stiffness(
      @ForAll @DoubleRange(min = 20, max = 90) double z,
      @ForAll @DoubleRange(min = 1e4, max = 3e5) double bolt,
      @ForAll @DoubleRange(min = 5e3, max = 1e5) double shoulder) {
    double two = BedBolt.rotation(PAD, z, z, bolt, shoulder);
    double one = BedBolt.rotation(PAD, z, 2 * bolt, shoulder);
    assertEquals(one, two, 1e-9 * one);
    double rigid = BedBolt.rotation(PAD, z, z / 2, bolt, 1e15);
    assertEquals(bolt * z * z * 1.25, rigid, 1e-5 * rigid);
  }

  @Test
  void play_turns_into_free_rotation_of_play_over_length_to_either_side() {
    JointStiffness k = JointStiffness.of(Samples.tenon(new Fit.Dry(0.3)), Samples.setting(), PAD);
    assertEquals(0.3 / 50, k.freeRotation(), 1e-15);
    assertEquals(0, k.low().rotInPlane());
  }

  @Test
  void a_stated_spring_is_taken_as_it_is_and_rigid_in_the_rest() {
    SpringSet mean =
        JointStiffness.of(
                new StatedSpring(1e6, 2e6, 3e6, OptionalDouble.empty()), Samples.setting(), PAD)
            .mean();
    assertEquals(2e6, mean.rotInPlane());
    assertEquals(Double.POSITIVE_INFINITY, mean.axial());
  }
}
