package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.PostEdges;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/** Places of bed bolts, rods through a middle post, and pegs beside bolts, worked by hand. */
class BoltPlacesByHandTest {

  private static final Joint.Members MEMBERS = new Joint.Members(110, 43, 88, 72);
  private static final JointForces FORCES = new JointForces(0, 400, 0, 9e4, 0, 0);

  /** Bolts 38 and 72 above the lower edge of a rail 110 deep; the tenon ends at 82. */
  private static final BoltedTenon TWO =
      new BoltedTenon(
          60,
          24,
          15,
          22,
          new Bolt(BoltSize.M10, 400, new Washer(31, 11, 3)),
          2,
          34,
          new BoltedTenon.Nut(16, 30, 63, true),
          2300);

  private static JointSetting setting(double above) {
    return new JointSetting(
        MEMBERS,
        FaceGrain.TANGENTIAL,
        FaceGrain.RADIAL,
        Samples.BEECH,
        Samples.FIR,
        Glue.PVA,
        above,
        400,
        90);
  }

  private static List<JointLimit> limits(Joint joint, JointSetting setting) {
    return JointCapacities.utilisations(
        joint, setting, Samples.strength(Samples.PARTIAL), FORCES, false);
  }

  private static void asks(double value, double least, JointLimit rule) {
    assertEquals(JointLimit.Nature.RULE, rule.nature());
    assertEquals(value, rule.capacity(), 1e-9);
    assertEquals(least, rule.demand(), 1e-9);
  }

  @Test
  void washers_lie_wholly_on_the_post_and_beside_each_other() {
    List<JointLimit> limits = limits(TWO, setting(12));
    // The upper bolt lies 82 − 72 = 10 below the mortise's upper end, 12 of post above that.
    asks(22, 15.5, Found.named(limits, "washer from the edges of the post"));
    asks(34, 31, Found.named(limits, "washers of two bolts side by side"));
    // Far from the ends it is the half width of the post that counts.
    asks(36, 15.5, Found.named(limits(TWO, setting(70)), "washer from the edges of the post"));
    // A rail 27 mm proud: the post ends 110 − 27 − 72 = 11 above the upper bolt.
    asks(
        11,
        15.5,
        Found.named(limits(TWO, setting(0).leftProud(27)), "washer from the edges of the post"));
  }

  @Test
  void washers_on_a_rail_that_lies_across_keep_from_its_edges() {
    // Bolts at 38 and 72 of 110: the rail begins 29 above the lower edge and ends 7 above the upper
    // one, so that 9 of it lie below the lower bolt and 45 above the upper one.
    JointSetting across = setting(400).onPostWith(new PostEdges(-29, 7));
    asks(9, 15.5, Found.named(limits(TWO, across), "washer from the edges of the post"));
    // It ends 21 below the upper edge: 110 − 21 − 72 = 17 above the upper bolt.
    JointSetting lower = setting(400).onPostWith(new PostEdges(3, -21));
    asks(17, 15.5, Found.named(limits(TWO, lower), "washer from the edges of the post"));
  }

  @Test
  void the_nut_pulls_along_the_grain_and_the_bolt_keeps_from_the_faces() {
    List<JointLimit> limits = limits(TWO, setting(12));
    asks((110 - 34) / 2.0, 1.5 * 16, Found.named(limits, "nut from the edge of the rail"));
    asks(43 / 2.0, 1.5 * 10, Found.named(limits, "bolt from the face of the rail"));
  }

  @Test
  void rods_through_a_middle_post_have_no_washers_and_press_the_rail_opposite() {
    List<JointLimit> limits = limits(TWO, setting(12).withRod(true));
    assertTrue(limits.stream().noneMatch(limit -> limit.place().equals("washer")));
    // Lever 110/2 + 17 − 110/9 = 59.78: 9e4/59.78 = 1506 N, less than the preload of 2300 N.
    // Shoulder 110·43 − 60·24 = 3290 mm².
    JointLimit pressed = Found.named(limits, "shoulder of the rail opposite pressed by the rods");
    assertEquals(2 * 2300 / 3290.0, pressed.demand(), 1e-9);
    // Post of 1.5 MPa across the grain, helped by 30 mm of fibres on one side of 110.
    assertEquals(1.5 * (110 + 30) / 110, pressed.capacity(), 1e-9);
  }

  @Test
  void a_rod_from_nut_to_nut_stretches_more_than_a_bolt() {
    assertEquals(88 + 63, TWO.gripLength(MEMBERS, false), 0);
    assertEquals(88 + 2 * 63, TWO.gripLength(MEMBERS, true), 0);
    double bolt = axial(setting(12));
    // The pull is that of the bolts alone: it falls as their length grows.
    assertEquals(151 / 214.0, axial(setting(12).withRod(true)) / bolt, 1e-9);
  }

  private static double axial(JointSetting setting) {
    return JointStiffness.of(TWO, setting, Pad.blank()).mean().axial();
  }

  /** Tenon 80 high over a shoulder of 18, pegs of 8 mm 22 from the shoulder, 50 long. */
  private static JointLimit pegged(String failure, CrossBore bore) {
    Joint joint =
        new MortiseAndTenon(
            80,
            16,
            50,
            18,
            0,
            1,
            false,
            Optional.empty(),
            new Fit.Pegged(false, new Peg(8, TenonProportions.OAK), 1, 0, 22, 0));
    JointSetting setting = Samples.setting().crossedBy(List.of(bore));
    return Found.named(
        JointCapacities.utilisations(
            joint,
            setting,
            Samples.strength(Samples.PARTIAL),
            new JointForces(600, 0, 0, 0, 0, 0),
            false),
        failure);
  }

  @Test
  void a_bolt_behind_a_peg_ends_its_relish_and_one_beside_it_does_not() {
    String relish = "relish beyond the peg";
    // Peg at 18 + 40 = 58 above the rail's edge. A bore of 11 at 60, its near side 38 − 5.5 deep.
    assertEquals(38 - 5.5 - 22, pegged(relish, new CrossBore(11, 60, 38)).capacity(), 1e-9);
    assertEquals(50 - 22, pegged(relish, new CrossBore(11, 75, 38)).capacity(), 1e-9);
  }

  @Test
  void a_bolt_between_peg_and_shoulder_takes_height_from_the_pulled_tenon() {
    String tears = "tenon tearing beside the peg holes";
    double ft = Samples.strength(Samples.PARTIAL).rail().fT0();
    assertEquals(
        ft * (80 - 8 - 11) * 16, pegged(tears, new CrossBore(11, 75, 25)).capacity(), 1e-6);
    assertEquals(ft * (80 - 8) * 16, pegged(tears, new CrossBore(11, 75, 38)).capacity(), 1e-6);
  }
}
