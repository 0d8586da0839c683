package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Peg;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Line;
import org.stoutwork.working.Working;

class JointCapacitiesTest {

  private static final JointForces FORCES = new JointForces(400, 800, 120, 9e4, 5e3, 2e3);
  private static final List<StrengthFamily> FAMILIES = List.of(Samples.PARTIAL, Samples.ALLOWABLE);

  private static List<JointLimit> limits(Joint joint, StrengthFamily family, JointForces forces) {
    return JointCapacities.utilisations(
        joint, Samples.setting(), Samples.strength(family), forces, false);
  }

  private static Map<String, JointLimit> byName(List<JointLimit> limits) {
    Map<String, JointLimit> out = new TreeMap<>();
    limits.forEach(limit -> out.put(limit.failure(), limit));
    return out;
  }

  private static JointLimit one(Joint joint, StrengthFamily family, JointForces f, String name) {
    return byName(limits(joint, family, f)).get(name);
  }

  @Test
  void every_limit_of_every_joint_ends_in_its_utilisation_and_prints() {
    for (StrengthFamily family : FAMILIES) {
      for (Joint joint : Samples.all()) {
        List<JointLimit> kept =
            JointCapacities.utilisations(
                joint, Samples.setting(), Samples.strength(family), FORCES, true);
        List<JointLimit> blank = limits(joint, family, FORCES);
        assertFalse(kept.isEmpty(), joint.title());
        for (int i = 0; i < kept.size(); i++) {
          JointLimit limit = kept.get(i);
          assertEquals(blank.get(i).utilisation(), limit.utilisation(), joint.title());
          assertEquals(Working.NONE, blank.get(i).working());
          limit.working().lines().forEach(line -> assertFalse(line.text().isBlank()));
          if (limit.demand() > 0) {
            assertEquals(limit.utilisation(), limit.working().result().orElseThrow());
          }
        }
      }
    }
  }

  @Test
  void a_glued_tenon_names_all_its_ways_to_fail() {
    Map<String, JointLimit> found =
        byName(limits(Samples.tenon(new Fit.Glued()), Samples.PARTIAL, FORCES));
    assertEquals(
        Set.of(
            "glue line under moment",
            "withdrawal of the glued cheeks",
            "glue line under moment, pull and shear together",
            "shoulder crushing the post",
            "tenon shear at the shoulder",
            "tenon shear across the frame",
            "tenon breaking at the root",
            "tenon edge crushing in the mortise",
            "tenon twisting off",
            "cheek of the mortise splitting off",
            "horn of the post shearing off",
            "post splitting across the grain"),
        found.keySet());
  }

  @Property
  void a_turned_moment_uses_a_joint_with_equal_shoulders_alike(
      @ForAll @DoubleRange(min = 1e3, max = 5e5) double moment) {
    Joint joint =
        new MortiseAndTenon(80, 16, 50, 20, 0, 1, false, Optional.empty(), new Fit.Glued());
    JointForces one = new JointForces(0, 0, 0, moment, 0, 0);
    JointForces other = new JointForces(0, 0, 0, -moment, 0, 0);
    for (StrengthFamily family : FAMILIES) {
      List<JointLimit> a = limits(joint, family, one);
      List<JointLimit> b = limits(joint, family, other);
      for (int i = 0; i < a.size(); i++) {
        assertEquals(a.get(i).utilisation(), b.get(i).utilisation(), 1e-12, a.get(i).failure());
      }
    }
  }

  @Property(tries = 60)
  void stronger_wood_is_never_used_more(@ForAll @DoubleRange(min = 1.01, max = 2) double factor) {
    for (StrengthFamily family : FAMILIES) {
      for (Joint joint : Samples.all()) {
        List<JointLimit> weak = limits(joint, family, FORCES);
        List<JointLimit> strong =
            JointCapacities.utilisations(
                joint, Samples.setting(), Samples.strength(family, factor), FORCES, false);
        for (int i = 0; i < weak.size(); i++) {
          assertTrue(
              strong.get(i).utilisation() <= weak.get(i).utilisation() * (1 + 1e-12),
              joint.title() + ": " + weak.get(i).failure());
        }
      }
    }
  }

  @Property(tries = 60)
  void more_force_is_never_less_use(@ForAll @DoubleRange(min = 1, max = 4) double more) {
    JointForces larger = new JointForces(400 * more, 800 * more, 120 * more, 9e4 * more, 5e3, 2e3);
    for (Joint joint : Samples.all()) {
      List<JointLimit> small = limits(joint, Samples.PARTIAL, FORCES);
      List<JointLimit> large = limits(joint, Samples.PARTIAL, larger);
      for (int i = 0; i < small.size(); i++) {
        assertTrue(
            large.get(i).utilisation() >= small.get(i).utilisation() - 1e-12,
            joint.title() + ": " + small.get(i).failure());
      }
    }
  }

  @Property
  void a_larger_peg_hole_never_strengthens_the_tenon(
      @ForAll @DoubleRange(min = 5, max = 14) double d,
      @ForAll @DoubleRange(min = 0.1, max = 4) double more) {
    String failure = "tenon tearing beside the peg holes";
    for (StrengthFamily family : FAMILIES) {
      JointLimit small = one(Samples.tenon(Samples.pegged(false, d, 0)), family, FORCES, failure);
      JointLimit large =
          one(Samples.tenon(Samples.pegged(false, d + more, 0)), family, FORCES, failure);
      assertTrue(large.capacity() < small.capacity());
    }
  }

  @Property
  void a_thicker_mortise_never_strengthens_the_post(
      @ForAll @DoubleRange(min = 8, max = 30) double t,
      @ForAll @DoubleRange(min = 0.1, max = 8) double more) {
    String failure = "post splitting across the grain";
    for (StrengthFamily family : FAMILIES) {
      assertTrue(
          one(through(t + more), family, FORCES, failure).capacity()
              < one(through(t), family, FORCES, failure).capacity());
    }
  }

  private static Joint through(double t) {
    return new MortiseAndTenon(80, t, 70, 20, 0, 1, true, Optional.empty(), new Fit.Glued());
  }

  @Test
  void glue_without_strength_in_the_wood_carries_nothing_and_unglued_bridles_are_pins() {
    JointLimit pin =
        one(
            new Bridle(15, 1, false, new Fit.Dry(0)),
            Samples.PARTIAL,
            FORCES,
            "dry bridle turning freely");
    assertEquals(Double.POSITIVE_INFINITY, pin.utilisation());
    JointLimit idle =
        one(
            new Bridle(15, 1, false, new Fit.Dry(0)),
            Samples.PARTIAL,
            new JointForces(0, 10, 0, 0, 0, 0),
            "dry bridle turning freely");
    assertEquals(0, idle.utilisation());
  }

  @Test
  void pegs_of_a_glued_joint_are_a_reserve_and_those_of_a_dry_one_must_hold() {
    String yields = "pegs yielding in double shear";
    Joint dry = Samples.tenon(Samples.pegged(false, 8, 1));
    Joint glued = Samples.tenon(Samples.pegged(true, 8, 1));
    assertTrue(byName(limits(dry, Samples.PARTIAL, FORCES)).containsKey(yields));
    assertFalse(byName(limits(glued, Samples.PARTIAL, FORCES)).containsKey(yields));
    double partial = one(dry, Samples.PARTIAL, FORCES, yields).capacity();
    double allowable = one(dry, Samples.ALLOWABLE, FORCES, yields).capacity();
    assertTrue(partial > allowable && partial < 2 * allowable, partial + ", " + allowable);
  }

  @Test
  void a_haunch_helps_on_the_side_away_from_the_pressed_corner() {
    MortiseAndTenon plain =
        new MortiseAndTenon(70, 15, 50, 20, 0, 1, false, Optional.empty(), new Fit.Glued());
    MortiseAndTenon haunched =
        new MortiseAndTenon(
            70,
            15,
            50,
            20,
            0,
            1,
            false,
            Optional.of(new MortiseAndTenon.Haunch(30, 14)),
            new Fit.Glued());
    String glue = "glue line under moment";
    JointForces down = new JointForces(0, 0, 0, 1e5, 0, 0);
    JointForces up = new JointForces(0, 0, 0, -1e5, 0, 0);
    double gain =
        one(haunched, Samples.PARTIAL, down, glue).capacity()
            / one(plain, Samples.PARTIAL, down, glue).capacity();
    double other =
        one(haunched, Samples.PARTIAL, up, glue).capacity()
            / one(plain, Samples.PARTIAL, up, glue).capacity();
    assertTrue(gain > 1.2, "gain " + gain);
    assertTrue(other > 1 && other < gain, "other " + other);
  }

  @Test
  void the_groove_of_a_haunch_weakens_the_horn_above_it_and_not_the_post_below() {
    MortiseAndTenon haunched =
        new MortiseAndTenon(
            70,
            15,
            50,
            20,
            0,
            1,
            false,
            Optional.of(new MortiseAndTenon.Haunch(30, 14)),
            new Fit.Glued());
    String horn = "horn of the post shearing off";
    // 40 mm of post above the mortise: (2 · 50 + 15) · 40 less two sides of the groove 14 × 30;
    // shear strength of the post 2.5 MPa.
    double up =
        one(haunched, Samples.PARTIAL, new JointForces(0, -300, 0, 0, 0, 0), horn).capacity();
    assertEquals(2.5 * (115 * 40 - 2 * 14 * 30), up, 1e-9);
    double down =
        one(haunched, Samples.PARTIAL, new JointForces(0, 300, 0, 0, 0, 0), horn).capacity();
    assertEquals(2.5 * 115 * 300, down, 1e-9);
  }

  @Test
  void the_working_of_a_glue_line_says_which_share_of_the_glue_carries() {
    JointLimit moment =
        JointCapacities.utilisations(
                Samples.tenon(new Fit.Glued()),
                Samples.setting(),
                Samples.strength(Samples.PARTIAL),
                FORCES,
                true)
            .get(0);
    assertEquals("glue line under moment", moment.failure());
    // Tenon 80 × 16 × 50 of a rail 120 × 45: cheeks 8000 mm², edges 1600 and shoulder with end
    // 5400.
    assertEquals(8000.0 / 15000, value(moment, "s_x"), 1e-12);
    assertEquals(7000.0 / 15000, value(moment, "s_e"), 1e-12);
    assertEquals(0, value(moment, "s_l"), 0);
  }

  @Test
  void dowels_in_their_rail_are_the_only_glue_with_the_grain() {
    DowelledButt butt = Samples.dowels(Samples.MEMBERS);
    JointLimit moment =
        JointCapacities.utilisations(
                butt, Samples.setting(), Samples.strength(Samples.PARTIAL), FORCES, true)
            .get(0);
    double d = butt.dowel().diameter();
    double along = butt.count() * Math.PI * d * butt.inRail();
    double crossed = butt.count() * Math.PI * d * butt.inPost();
    double end = 120 * 45 - butt.count() * Math.PI * d * d / 4;
    assertEquals(along / (along + crossed + end), value(moment, "s_l"), 1e-12);
    assertEquals(crossed / (along + crossed + end), value(moment, "s_x"), 1e-12);
  }

  private static double value(JointLimit limit, String symbol) {
    return limit.working().lines().stream()
        .filter(line -> line.text().startsWith(symbol + " = "))
        .map(line -> ((Line.Calculated) line).value())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void crossed_glue_above_100_mm_is_not_counted() {
    Joint.Members deep = new Joint.Members(200, 45, 70, 56);
    JointSetting setting = Samples.setting(deep, Glue.PVA);
    double at100 = pull(100, setting);
    assertEquals(at100, pull(150, setting), 1e-9);
    assertTrue(pull(90, setting) < at100);
  }

  private static double pull(double h, JointSetting setting) {
    Joint joint =
        new MortiseAndTenon(h, 16, 50, 20, 0, 1, false, Optional.empty(), new Fit.Glued());
    return byName(
            JointCapacities.utilisations(
                joint,
                setting,
                Samples.strength(Samples.PARTIAL),
                new JointForces(1000, 0, 0, 0, 0, 0),
                false))
        .get("withdrawal of the glued cheeks")
        .capacity();
  }

  @Test
  void a_bottom_shoulder_notches_a_tenon_in_both_families() {
    for (StrengthFamily family : FAMILIES) {
      double without = shear(0, family);
      double with = shear(30, family);
      assertTrue(with < without, family.title());
    }
    assertEquals(
        Math.pow(80.0 / 110, 2), shear(30, Samples.ALLOWABLE) / shear(0, Samples.ALLOWABLE), 1e-12);
  }

  private static double shear(double shoulder, StrengthFamily family) {
    Joint joint =
        new MortiseAndTenon(80, 16, 50, shoulder, 0, 1, false, Optional.empty(), new Fit.Glued());
    return one(joint, family, FORCES, "tenon shear at the shoulder").capacity();
  }

  @Test
  void a_bench_size_glued_joint_carries_a_few_hundred_newton_metres() {
    JointLimit glue =
        one(Samples.tenon(new Fit.Glued()), Samples.PARTIAL, FORCES, "glue line under moment");
    assertTrue(glue.capacity() > 3e5 && glue.capacity() < 1.2e6, "M " + glue.capacity());
  }

  @Test
  void furniture_tests_of_dowels_stand_beside_the_capacity_and_do_not_change_it() {
    DowelledButt usual = Samples.dowels(Samples.MEMBERS);
    DowelledButt inside =
        new DowelledButt(
            new Peg(11, usual.dowel().wood()), 2, 31, 33, usual.spacing(), usual.edge());
    String words = words(inside);
    assertTrue(words.contains("For comparison, not counted"), words);
    assertTrue(words.contains("mean withdrawal force of a glued dowel"), words);
    DowelledButt deep =
        new DowelledButt(inside.dowel(), 2, 31, 39, inside.spacing(), inside.edge());
    assertTrue(words(deep).contains("No value is given"), words(deep));
    assertFalse(words(deep).contains("mean withdrawal force of a glued dowel"));
  }

  private static String words(Joint joint) {
    StringBuilder out = new StringBuilder();
    for (JointLimit limit :
        JointCapacities.utilisations(
            joint, Samples.setting(), Samples.strength(Samples.PARTIAL), FORCES, true)) {
      if (limit.failure().equals("dowels pulling out")) {
        limit.working().lines().forEach(line -> out.append(line.text()).append('\n'));
      }
    }
    return out.toString();
  }
}
