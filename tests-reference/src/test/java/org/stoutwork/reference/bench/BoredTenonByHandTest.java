package org.stoutwork.reference.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.setting.TimberStrength;

/**
 * A stub tenon 80 × 24 mm, 30 mm long, without a shoulder below it, bored 11 mm for one bolt; the
 * rail is 80 mm deep, so that the bore lies at mid-height. Shear strength 4.2 MPa, bending 40 MPa,
 * tension 24 MPa. Text-book statics: V·Q/(I·b) and M/W of a rectangle less a circle.
 */
class BoredTenonByHandTest {

  private static JointLimit limit(JointForces forces, String failure) {
    BoltedTenon tenon =
        new BoltedTenon(
            80,
            24,
            30,
            0,
            new Bolt(BoltSize.M10, 400, new Washer(34, 11, 3)),
            1,
            0,
            new BoltedTenon.Nut(16, 30, 60, true),
            0);
    TimberStiffness stiffness =
        new TimberStiffness(12205, 1858, 774, 899, 595, 195, 0.45, 0.51, 720);
    JointSetting setting =
        JointSetting.square(new Joint.Members(80, 45, 90, 70), stiffness, stiffness);
    TimberStrength strength =
        new TimberStrength(40, 24, 0.4, 27, 7, 4.2, 13.9, 590, 0.63, true, 12205, 103);
    StrengthFamily family = new StrengthFamily.PartialFactors(0.8, 1.3, 1.25);
    return JointCapacities.utilisations(
            tenon, setting, new JointStrength(strength, strength, family, false), forces, true)
        .stream()
        .filter(found -> found.failure().equals(failure))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void shear_up_and_down_passes_the_two_webs_beside_the_bore() {
    // I = 24 · 80³/12 - π · 11⁴/64 = 1 024 000 - 718.7 = 1 023 281 mm⁴
    // Q of the sound half = 24 · 80²/8 = 19 200 mm³; b = 24 - 11 = 13 mm
    // V_R = k_cr · f_v · I · b/Q = 0.67 · 4.2 · 1 023 281 · 13/19 200 = 1949.7 N
    // The whole tenon would carry 0.67 · 4.2 · 24 · 80/1.5 = 3601.9 N.
    JointLimit shear = limit(new JointForces(0, 800, 0, 0, 0, 0), "tenon shear at the shoulder");
    assertEquals(1949.7, shear.capacity(), 0.1);
    assertEquals(0.41033, shear.utilisation(), 1e-4);
  }

  @Test
  void shear_sideways_passes_the_height_above_and_below_the_bore() {
    // I = 80 · 24³/12 - 718.7 = 92 160 - 718.7 = 91 441 mm⁴; Q = 80 · 24²/8 = 5760 mm³
    // b = 80 - 11 = 69 mm; V_R = 0.67 · 4.2 · 91 441 · 69/5760 = 3082.4 N
    JointForces across = new JointForces(0, 0, 500, 0, 0, 0);
    assertEquals(3082.4, limit(across, "tenon shear across the frame").capacity(), 0.1);
  }

  @Test
  void bending_and_pull_meet_the_section_less_the_bore() {
    // A = 24 · 80 - 95.03 = 1824.97 mm²; W_y = 1 023 281/40 = 25 582 mm³
    // M = 800 · 15 = 12 000 N·mm; u = 12 000/(25 582 · 40) + 1000/(1824.97 · 24)
    //   = 0.011727 + 0.022832 = 0.034559
    JointForces forces = new JointForces(1000, 800, 0, 0, 0, 0);
    assertEquals(0.034559, limit(forces, "tenon breaking at the root").utilisation(), 1e-5);
  }
}
