package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.advice.DowelProportions;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.TimberStrength;

/** The dowels that are taken where a maker names none. */
class DowelProportionsTest {

  private static List<JointLimit> rules(
      Joint joint, Joint.Members members, double gravity, boolean hardwood) {
    JointStrength usual = Samples.strength(Samples.PARTIAL);
    TimberStrength rail =
        new TimberStrength(22, 13, 0.4, 18, 2.2, 2.4, 8, 390, gravity, hardwood, 10500, 70);
    return JointCapacities.utilisations(
            joint,
            Samples.setting(members, Glue.PVA),
            new JointStrength(rail, usual.post(), usual.family(), false),
            new JointForces(200, 300, 0, 5e4, 0, 0),
            false)
        .stream()
        .filter(limit -> limit.nature() == JointLimit.Nature.RULE)
        .toList();
  }

  /** Four and three diameters are the most that any wood asks: 11 of the thinnest, 6 mm, fit. */
  @Property
  void usual_dowels_keep_the_distances_of_every_wood(
      @ForAll @DoubleRange(min = 66, max = 260) double depth,
      @ForAll @DoubleRange(min = 14, max = 90) double thickness,
      @ForAll @DoubleRange(min = 46, max = 130) double post,
      @ForAll @DoubleRange(min = 0.3, max = 0.9) double gravity,
      @ForAll boolean hardwood,
      @ForAll boolean facing) {
    Joint.Members members = new Joint.Members(depth, thickness, post, 83);
    DowelledButt joint = new DowelProportions(members, gravity, hardwood, facing).usual();
    joint.requireFits(members);
    List<JointLimit> rules = rules(joint, members, gravity, hardwood);
    assertEquals(2, rules.size());
    rules.forEach(rule -> assertTrue(rule.utilisation() <= 1, rule.failure()));
    assertEquals(depth, 2 * joint.edge() + (joint.count() - 1) * joint.spacing(), 1e-9);
    assertTrue(joint.inPost() <= (facing ? 0.45 * post : post - 5));
  }

  @Property
  void so_do_as_many_as_a_maker_asks_for_where_any_fit(
      @ForAll @DoubleRange(min = 150, max = 260) double depth,
      @ForAll @DoubleRange(min = 14, max = 90) double thickness,
      @ForAll @IntRange(min = 2, max = 6) int count) {
    Joint.Members members = new Joint.Members(depth, thickness, 88, 83);
    DowelledButt joint =
        new DowelProportions(members, 0.41, false, false).usual(Optional.of(count));
    assertEquals(count, joint.count());
    rules(joint, members, 0.41, false)
        .forEach(rule -> assertTrue(rule.utilisation() <= 1, rule.failure()));
  }

  @Test
  void light_softwood_takes_thinner_dowels_than_a_heavy_hardwood() {
    // A third of 44 is 14.7: 14 is sold, and 7 · 14 = 98 of 104 mm; 11 · 8 = 88, 11 · 10 = 110.
    Joint.Members members = new Joint.Members(104, 44, 76, 92);
    assertEquals(14, new DowelProportions(members, 0.64, true, false).usual().dowel().diameter());
    assertEquals(8, new DowelProportions(members, 0.41, false, false).usual().dowel().diameter());
    // Two dowels 28 mm from the edges, 48 mm apart, 56 long in each piece; 34 in a shared leg.
    DowelledButt joint = new DowelProportions(members, 0.64, true, false).usual();
    assertEquals(28, joint.edge(), 1e-12);
    assertEquals(48, joint.spacing(), 1e-12);
    assertEquals(56, joint.inPost(), 0);
    assertEquals(34, new DowelProportions(members, 0.64, true, true).usual().inPost(), 0);
  }
}
