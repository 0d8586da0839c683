package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Peg;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.glue.GluedPanel;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;

/** The wood beside the glue of bridles and laps, and posts split by pegs, worked out by hand. */
class CrossedPanelsByHandTest {

  private static final Pad PAD = Pad.blank();
  private static final String TONGUE_SHEARED = "tongue shearing along the grain within the joint";
  private static final String CHEEKS_SPLIT =
      "cheeks of the slot splitting along the grain beside the glue";

  private static JointLimit limit(Joint joint, JointForces forces, String failure) {
    return limit(joint, Samples.PARTIAL, forces, failure);
  }

  private static JointLimit limit(
      Joint joint, StrengthFamily family, JointForces forces, String failure) {
    List<JointLimit> all =
        JointCapacities.utilisations(
            joint, Samples.setting(), Samples.strength(family), forces, false);
    return all.stream().filter(l -> l.failure().equals(failure)).findFirst().orElseThrow();
  }

  /** Sums over a quarter of a face: distances, slips along a, slips along b. */
  private static double[] sums(double a, double b) {
    int n = 400;
    double[] out = new double[3];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double x = (i + 0.5) * a / 2 / n;
        double y = (k + 0.5) * b / 2 / n;
        double r = Math.hypot(x, y);
        double piece = a * b / 4 / n / n;
        out[0] += r * piece;
        out[1] += y / r * piece;
        out[2] += x / r * piece;
      }
    }
    return out;
  }

  @Property(tries = 20)
  void shear_within_the_joint_is_the_slip_of_half_a_face(
      @ForAll @DoubleRange(min = 30, max = 140) double a,
      @ForAll @DoubleRange(min = 30, max = 100) double b) {
    double[] s = sums(a, b);
    double moment = 73e3;
    // Strength of the line that the moment asks for, one face: M / (4 Q). Half of the face, beyond
    // the middle, then pushes two quarters across the rail.
    double line = moment / (4 * s[0]);
    assertEquals(
        2 * line * s[2] + 310 / 2.0,
        GluedPanel.shear(PAD, a, b, moment, 310),
        1e-4 * moment / Math.min(a, b));
    assertEquals(
        2 * line * s[1], GluedPanel.shear(PAD, b, a, moment, 0), 1e-4 * moment / Math.min(a, b));
  }

  @Property(tries = 20)
  void tension_is_what_an_even_push_and_a_parabola_of_shear_leave(
      @ForAll @DoubleRange(min = 30, max = 140) double a,
      @ForAll @DoubleRange(min = 30, max = 100) double b,
      @ForAll @DoubleRange(min = 5, max = 40) double t) {
    double moment = 51e3;
    int n = 4000;
    double push = 0;
    for (int i = 0; i < n; i++) {
      double y = (i + 0.5) * b / n - b / 2;
      push += (a / 2) / Math.hypot(a / 2, y) * b / n;
    }
    double q = moment / (4 * sums(a, b)[0]) * push + 220 / a;
    double sigma = 0;
    double most = 0;
    for (int i = 0; i < n; i++) {
      double y = (i + 0.5) * b / n - b / 2;
      sigma += (1.5 * q / (b * t) * (1 - 4 * y * y / b / b) - q / (b * t)) * b / n;
      most = Math.max(most, Math.abs(sigma));
    }
    assertEquals(most, GluedPanel.tension(PAD, a, b, t, moment, 220), 2e-3 * most);
  }

  @Test
  void a_glued_bridle_is_judged_by_tongue_and_cheeks_within_the_joint() {
    Joint bridle = new Bridle(15, 1, true, new Fit.Glued());
    JointForces forces = new JointForces(0, 0, 0, 9e4, 0, 0);
    JointLimit sheared = limit(bridle, forces, TONGUE_SHEARED);
    // Rail 120 deep, shear strength 2.6 MPa, a third of the width lost to cracks.
    assertEquals(2.6 * 0.67 * 15 * 120 / 1.5, sheared.capacity(), 1e-9);
    // Faces 70 along the rail by 100 that count.
    double[] s = sums(70, 100);
    assertEquals(9e4 * s[2] / (2 * s[0]), sheared.demand(), 0.5);
    JointLimit split = limit(bridle, forces, CHEEKS_SPLIT);
    // Cheeks of (56 − 15)/2 on either side; f_t90 of the post.
    double ends = 100 * Math.log((70 + Math.hypot(70, 100)) / 100);
    double q = 9e4 * ends / (4 * s[0]);
    assertEquals(q / (6 * Math.sqrt(3) * 41), split.demand(), 1e-4);
    assertEquals(Samples.strength(Samples.PARTIAL).post().fT90(), split.capacity());
  }

  @Test
  void allowable_shear_has_the_cracks_in_it_already() {
    Joint bridle = new Bridle(15, 1, true, new Fit.Glued());
    JointForces forces = new JointForces(0, 210, 0, 9e4, 0, 0);
    JointLimit sheared = limit(bridle, Samples.ALLOWABLE, forces, TONGUE_SHEARED);
    assertEquals(2.6 * 15 * 120 / 1.5, sheared.capacity(), 1e-9);
    Joint tenon = Samples.tenon(new Fit.Glued());
    String side = "tenon shear across the frame";
    assertEquals(
        2.6 * 16 * 80 / 1.5, limit(tenon, Samples.ALLOWABLE, forces, side).capacity(), 1e-9);
    assertEquals(
        0.67 * 2.6 * 16 * 80 / 1.5, limit(tenon, Samples.PARTIAL, forces, side).capacity(), 1e-9);
  }

  @Test
  void the_cheek_between_two_tongues_counts_half_for_each_of_its_faces() {
    Joint bridle = new Bridle(10, 2, false, new Fit.Glued());
    JointForces forces = new JointForces(0, 0, 0, 9e4, 0, 0);
    JointLimit split = limit(bridle, forces, CHEEKS_SPLIT);
    // Slots and what stands between take 30 of 56: outer cheeks 13, the inner one 10, 5 a face.
    double whole = limit(new Bridle(36, 1, false, new Fit.Glued()), forces, CHEEKS_SPLIT).demand();
    assertEquals(whole, split.demand(), 1e-12);
  }

  @Test
  void either_sense_of_the_moment_uses_the_wood_alike_and_laps_are_judged_too() {
    for (Joint joint :
        List.of(new Bridle(14, 1, true, new Fit.Glued()), new HalfLap(21, true, true))) {
      long panels = 0;
      for (JointLimit one : limits(joint, 8e4)) {
        if (one.failure().contains("within the joint") || one.failure().contains("beside the")) {
          panels++;
          assertEquals(
              one.utilisation(),
              limit(joint, new JointForces(0, 0, 0, -8e4, 0, 0), one.failure()).utilisation());
        }
      }
      assertEquals(4, panels, joint.title());
    }
  }

  private static List<JointLimit> limits(Joint joint, double moment) {
    return JointCapacities.utilisations(
        joint,
        Samples.setting(),
        Samples.strength(Samples.PARTIAL),
        new JointForces(0, 0, 0, moment, 0, 0),
        false);
  }

  @Test
  void pegs_near_the_edge_split_the_post_sooner_and_a_moment_pulls_them_too() {
    String failure = "post splitting across the grain at the pegs";
    Peg peg = new Peg(8, TenonProportions.OAK);
    Joint near = new Bridle(15, 1, false, new Fit.Pegged(false, peg, 1, 0, 22, 0));
    Joint far = new Bridle(15, 1, false, new Fit.Pegged(false, peg, 1, 0, 35, 0));
    JointForces forces = new JointForces(500, 0, 0, 6e4, 0, 0);
    JointLimit split = limit(near, forces, failure);
    // Cheeks 20.5 on either side of a post 70 deep, pegs 22 from its edge; k_mod 0.8, γ_M 1.3.
    assertEquals(14 * 41 * Math.sqrt(22 / (1 - 22.0 / 70)) * 0.8 / 1.3, split.capacity(), 1e-6);
    // The tongue is as deep as the rail: lever 120/2 less a third of the pressed third.
    assertEquals(6e4 / (60 - 120.0 / 9) + 500, split.demand(), 1e-6);
    assertTrue(limit(far, forces, failure).capacity() > split.capacity());
  }

  /** Tenon 80 high over a shoulder of 18: lever 40 + 18 − 40/3 = 44.667 mm; 1070 + 130 N. */
  @Test
  void a_moment_pulls_the_pegs_of_a_dry_tenon_in_every_way_they_may_fail() {
    JointForces forces = new JointForces(130, 0, 0, 47_800, 0, 0);
    double pull = 47_800 / (40 + 18 - 40.0 / 3) + 130;
    Joint dry = Samples.tenon(Samples.pegged(false, 8, 0));
    for (String failure :
        List.of(
            "pegs yielding in double shear",
            "relish shearing out behind the pegs",
            "tenon tearing beside the peg holes",
            "post splitting across the grain at the pegs")) {
      assertEquals(pull, limit(dry, forces, failure).demand(), 1e-9, failure);
    }
    // In a glued tenon the moment goes through the cheeks.
    Joint glued = Samples.tenon(Samples.pegged(true, 8, 0));
    assertEquals(130, limit(glued, forces, "tenon tearing beside the peg holes").demand(), 0);
  }

  @Test
  void a_torn_tenon_names_what_is_cut_out_of_it() {
    Joint pegged = Samples.tenon(Samples.pegged(false, 8, 0));
    torn(pegged, "tenon tearing beside the peg holes", "its peg holes");
    TenonProportions usual = TenonProportions.forRail(Samples.MEMBERS);
    torn(usual.wedged(true, Samples.MEMBERS), "tenon tearing beside its kerfs", "its kerfs");
    torn(usual.looseWedge(), "tenon tearing beside the wedge", "the slot of its wedge");
  }

  private static void torn(Joint joint, String failure, String cut) {
    List<String> meanings = meanings(joint, failure);
    assertTrue(meanings.contains("pull that breaks the tenon beside " + cut), meanings.toString());
  }

  @Test
  void a_loose_wedge_asks_for_no_stiffness_of_the_post() {
    List<String> meanings =
        meanings(TenonProportions.forRail(Samples.MEMBERS).looseWedge(), "wedge breaking");
    assertTrue(meanings.stream().anyMatch(m -> m.startsWith("lever")), meanings.toString());
    assertTrue(meanings.stream().noneMatch(m -> m.contains("stiffness")), meanings.toString());
  }

  private static List<String> meanings(Joint joint, String failure) {
    List<JointLimit> all =
        JointCapacities.utilisations(
            joint,
            Samples.setting(),
            Samples.strength(Samples.PARTIAL),
            new JointForces(130, 0, 0, 47_800, 0, 0),
            true);
    return Found.named(all, failure).working().lines().stream()
        .filter(line -> line instanceof Line.Calculated)
        .map(line -> ((Line.Calculated) line).formula().result().meaning())
        .toList();
  }
}
