package org.stoutwork.reference.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.setting.TimberStrength;

/**
 * Shear of a tenon 80 × 16 mm, 50 mm long, with a shoulder of 20 mm below it, under 800 N, the
 * wood's shear strength 4.2 MPa.
 *
 * <p>EN 1995-1-1 6.5.2 (6.60), (6.62), square notch; form and k_n for other products read in LVL
 * Handbook Europe (2025), eq. 4.46 to 4.48; k_n = 5 for solid timber and k_cr = 0.67 from memory.
 * NDS 3.4.3.2 (3.4-3), member notched on the tension face, from memory.
 */
class TenonShearByHandTest {

  private static final double FORCE = 800;
  private static final double SHEAR_STRENGTH = 4.2;

  private static JointLimit shear(StrengthFamily family) {
    MortiseAndTenon tenon =
        new MortiseAndTenon(80, 16, 50, 20, 0, 1, false, Optional.empty(), new Fit.Glued());
    TimberStiffness stiffness =
        new TimberStiffness(12205, 1858, 774, 899, 595, 195, 0.45, 0.51, 720);
    JointSetting setting =
        JointSetting.square(new Joint.Members(120, 45, 90, 70), stiffness, stiffness);
    TimberStrength strength =
        new TimberStrength(40, 24, 0.4, 27, 7, SHEAR_STRENGTH, 13.9, 590, 0.63, true, 12205, 103);
    return JointCapacities.utilisations(
            tenon,
            setting,
            new JointStrength(strength, strength, family, false),
            new JointForces(0, FORCE, 0, 0, 0, 0),
            true)
        .stream()
        .filter(limit -> limit.failure().equals("tenon shear at the shoulder"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void under_partial_factors_the_notch_leaves_nine_tenths() {
    // H = 80 + 20 = 100 mm, α = 0.8, x = 50/2 = 25 mm:
    // k_v = 5/(√100 · (√(0.8 · 0.2) + 0.8 · 0.25 · √(1/0.8 - 0.64)))
    //     = 5/(10 · (0.4 + 0.2 · 0.78102)) = 0.89894
    // V_R = 0.89894 · 4.2 · 0.67 · 16 · 80/1.5 = 2158.6 N; 800/2158.6 = 0.3706
    JointLimit limit = shear(new StrengthFamily.PartialFactors(0.8, 1.3, 1.25));
    assertEquals(2158.6, limit.capacity(), 0.1);
    assertEquals(0.3706, limit.utilisation(), 5e-5);
    assertEquals(FORCE, limit.demand(), 0);
  }

  @Test
  void under_allowable_stresses_the_notch_counts_squared() {
    // V_r = 2/3 · 4.2 · 16 · 80 · (80/100)² = 2293.8 N; 800/2293.8 = 0.3488
    JointLimit limit = shear(new StrengthFamily.Allowable(1, 2.3));
    assertEquals(2293.8, limit.capacity(), 0.1);
    assertEquals(0.3488, limit.utilisation(), 5e-5);
  }
}
