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
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/** Laps, housings and butt joints held by screws. */
class ScrewedJointTest {

  private static final JointForces FORCES = new JointForces(310, 420, 95, 21_000, 1_300, 900);

  private static HalfLap lap(int count) {
    return new HalfLap(21, false, false, Optional.of(Samples.screws(50, count)));
  }

  private static List<JointLimit> limits(Joint joint, StrengthFamily family, JointForces forces) {
    return JointCapacities.utilisations(
        joint, Samples.setting(), Samples.strength(family), forces, true);
  }

  private static JointLimit limit(
      Joint joint, StrengthFamily family, JointForces forces, String failure) {
    List<JointLimit> all = limits(joint, family, forces);
    return all.stream()
        .filter(l -> l.failure().equals(failure))
        .findFirst()
        .orElseThrow(() -> new AssertionError(all.stream().map(JointLimit::failure).toList()));
  }

  @Test
  void the_outermost_screw_of_a_lap_carries_its_share_of_force_and_moment() {
    // Three thin screws in a lap of 70 by 120 mm, 27 mm from the edges and 33 mm apart: the ends
    // leave 70 - 24·2.4 = 12.4 mm, so they stand 6 mm to the left, right and left of the middle.
    // Their centre lies 2 mm to the left of it: 4, 8 and 4 mm from them.
    double squares = 2 * (4.0 * 4 + 33 * 33) + 8.0 * 8;
    double turning = 21_000 + 420 * 2;
    double along = 310.0 / 3 + turning * 33 / squares;
    double across = 420.0 / 3 + turning * 8 / squares;
    JointLimit found = limit(with(2.4), Samples.PARTIAL, FORCES, "screw yielding across");
    assertEquals(Math.hypot(along, across), found.demand(), 1e-9);
    double apart = 95 + 1_300 / 35.0 + 900 / 60.0;
    assertEquals(
        apart / Math.pow(3, 0.9),
        limit(lap(3), Samples.PARTIAL, FORCES, "thread pulling out").demand(),
        1e-9);
    assertEquals(
        apart / 3, limit(lap(3), Samples.ALLOWABLE, FORCES, "head pulling through").demand(), 1e-9);
  }

  /** 4.5 mm: off the line by an eighth of the lap, by what its ends leave, not at all. */
  @Test
  void screws_stand_as_far_off_the_line_as_the_ends_of_the_lap_let_them() {
    ScrewSet set = Samples.screws(50, 3);
    assertEquals(-20, set.beside(0, 160));
    assertEquals(11, set.beside(1, 130), 1e-9);
    assertEquals(0, set.beside(1, 107));
    // Centre 11/3 mm off the middle: 22/3, 44/3 and 22/3 mm from it.
    assertEquals(2 * (484 / 9.0 + 33 * 33) + 1936 / 9.0, set.squares(130, 120), 1e-9);
    assertEquals(44 / 3.0, set.farBeside(130), 1e-9);
    ScrewSet even = Samples.screws(50, 2);
    assertEquals(0, even.offCentre(130));
    assertEquals(2 * (11 * 11 + 33 * 33), even.squares(130, 120), 1e-9);
    assertEquals(0, Samples.screws(50, 1).squares(130, 120));
  }

  @Test
  void screws_of_a_lap_are_asked_for_their_pitch_in_both_pieces() {
    String across = "spacing of screws across the grain";
    String along = "spacing of screws along the grain";
    assertEquals(33, limit(lap(3), Samples.PARTIAL, FORCES, across).capacity());
    assertEquals(33, limit(lap(3), Samples.PARTIAL, FORCES, along).capacity());
    // Drilled, 4.5 mm: (3 + sin 90°) d in the rail, (4 + cos 0°) d in the post; NDS 5 D and 10 D.
    assertEquals(18, limit(lap(3), Samples.PARTIAL, FORCES, across).demand(), 1e-9);
    assertEquals(22.5, limit(lap(3), Samples.PARTIAL, FORCES, along).demand(), 1e-9);
    assertEquals(22.5, limit(lap(3), Samples.ALLOWABLE, FORCES, across).demand(), 1e-9);
    assertEquals(45, limit(lap(3), Samples.ALLOWABLE, FORCES, along).demand(), 1e-9);
  }

  @Test
  void one_screw_is_a_pin_and_two_are_not() {
    String turning = "lap turning on one screw";
    assertTrue(Double.isInfinite(limit(lap(1), Samples.PARTIAL, FORCES, turning).utilisation()));
    assertTrue(
        limits(lap(2), Samples.PARTIAL, FORCES).stream()
            .noneMatch(l -> l.failure().equals(turning)));
    assertEquals(0, JointStiffness.of(lap(1), Samples.setting(), Pad.blank()).high().rotInPlane());
    assertTrue(JointStiffness.of(lap(2), Samples.setting(), Pad.blank()).low().rotInPlane() > 0);
  }

  @Test
  void a_lap_slips_by_the_slip_modulus_of_its_screws() {
    JointStiffness k = JointStiffness.of(lap(3), Samples.setting(), Pad.blank());
    double one = Math.pow(720.0 * 500, 0.75) * 4.5 / 23;
    assertEquals(3 * one, k.mean().shear(), 1e-6);
    assertEquals(one * Samples.screws(50, 3).squares(70, 120), k.mean().rotInPlane(), 1e-3);
    assertEquals(0.5 * k.mean().axial(), k.low().axial(), 1e-9);
    // Thread of 50 · 0.6 - 4.5 mm, all of it in the post: 25 d l.
    assertEquals(3 * 25 * 4.5 * (29 - 4.5), k.mean().shearAcross(), 1e-9);
  }

  @Test
  void screws_beside_glue_press_and_are_not_counted() {
    HalfLap both = new HalfLap(21, true, false, Optional.of(Samples.screws(50, 3)));
    HalfLap glued = new HalfLap(21, true, false);
    assertEquals("glued and screwed half-lap", both.title());
    assertEquals(
        JointStiffness.of(glued, Samples.setting(), Pad.blank()),
        JointStiffness.of(both, Samples.setting(), Pad.blank()));
    List<JointLimit> all = limits(both, Samples.PARTIAL, FORCES);
    assertTrue(all.stream().anyMatch(l -> l.failure().equals("glue line under moment")));
    assertTrue(all.stream().noneMatch(l -> l.failure().equals("screw yielding across")));
    assertTrue(all.stream().anyMatch(l -> l.failure().equals("screw from the end of the rail")));
  }

  @Test
  void
      no_standard_counts_a_wood_screw_pulled_from_the_end_of_a_rail_and_one_counts_a_coach_screw() {
    ScrewedButt wood = new ScrewedButt(Samples.screws(125, 2));
    ScrewedButt coach = new ScrewedButt(new ScrewSet(CoachScrew.plain(8, 135, 50, 24), 2, 35, 5));
    String out = "thread pulling out";
    assertEquals(0, limit(wood, Samples.PARTIAL, FORCES, out).capacity());
    assertEquals(0, limit(wood, Samples.ALLOWABLE, FORCES, out).capacity());
    assertEquals(0, limit(coach, Samples.PARTIAL, FORCES, out).capacity());
    assertTrue(limit(coach, Samples.ALLOWABLE, FORCES, out).capacity() > 500);
  }

  @Test
  void the_farthest_screw_of_a_butt_pulls_against_the_pressed_edge() {
    ScrewedButt butt = new ScrewedButt(new ScrewSet(CoachScrew.plain(8, 135, 50, 24), 2, 35, 5));
    double near = 35 - 120 / 9.0;
    double far = 85 - 120 / 9.0;
    double pull = 310 / 2.0 + 21_000 * far / (near * near + far * far) + 1_300 / (2 * 22.5);
    assertEquals(pull, limit(butt, Samples.ALLOWABLE, FORCES, "thread pulling out").demand(), 1e-9);
    assertEquals(
        Math.hypot(420, 95) / 2,
        limit(butt, Samples.ALLOWABLE, FORCES, "screw yielding across").demand(),
        1e-9);
  }

  @Test
  void a_screwed_housing_is_held_in_by_its_screws_and_carries_by_its_trench() {
    Housing housing = new Housing(12, false, Optional.of(Samples.screws(115, 2)));
    List<JointLimit> all = limits(housing, Samples.ALLOWABLE, FORCES);
    assertTrue(all.stream().noneMatch(l -> l.failure().equals("end pulling out of its housing")));
    assertEquals(
        155, limit(housing, Samples.ALLOWABLE, FORCES, "head pulling through").demand(), 1e-9);
    assertEquals(
        0, limit(housing, Samples.ALLOWABLE, FORCES, "screw yielding across").demand(), 1e-9);
    assertTrue(
        limit(housing, Samples.ALLOWABLE, FORCES, "end crushing in its housing").demand() > 0);
  }

  @Property
  void no_lap_is_weaker_for_thicker_screws_or_used_less_for_a_greater_moment(
      @ForAll @DoubleRange(min = 3, max = 5) double d,
      @ForAll @DoubleRange(min = 0, max = 1) double more) {
    for (StrengthFamily family : List.of(Samples.PARTIAL, Samples.ALLOWABLE)) {
      String yielding = "screw yielding across";
      JointLimit thin = limit(with(d), family, FORCES, yielding);
      JointLimit thick = limit(with(d + more), family, FORCES, yielding);
      assertTrue(thick.capacity() >= thin.capacity() * (1 - 1e-12));
      JointForces turned = new JointForces(310, 420, 95, 21_000 * (1 + more), 1_300, 900);
      assertTrue(
          limit(with(d), family, turned, yielding).utilisation() >= thin.utilisation() - 1e-12);
    }
  }

  private static HalfLap with(double d) {
    Screw screw = WoodScrew.plain(d, 52, 33, 2 * d);
    return new HalfLap(21, false, false, Optional.of(new ScrewSet(screw, 3, 27, d / 2)));
  }

  @Test
  void screws_that_cannot_be_are_refused_by_name() {
    Joint.Members m = Samples.MEMBERS;
    HalfLap out = new HalfLap(21, false, false, Optional.of(Samples.screws(60, 2)));
    JointFault through = assertThrows(JointFault.class, () -> out.requireFits(m));
    assertEquals("length of the screw", through.part());
    HalfLap stub = new HalfLap(21, false, false, Optional.of(Samples.screws(24, 2)));
    assertEquals(
        "length of the screw", assertThrows(JointFault.class, () -> stub.requireFits(m)).part());
    ScrewSet wide = new ScrewSet(WoodScrew.plain(5, 50, 30, 9), 3, 58, 2.6);
    HalfLap crowded = new HalfLap(21, false, false, Optional.of(wide));
    assertEquals(
        "height taken by the screws",
        assertThrows(JointFault.class, () -> crowded.requireFits(m)).part());
    assertThrows(JointFault.class, () -> Samples.screws(50, 9));
  }
}
