package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.HoleFit;
import org.stoutwork.fastener.Nail;
import org.stoutwork.fastener.Washer;
import org.stoutwork.fastener.placing.PilotHoles;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.joint.advice.Advice;
import org.stoutwork.joint.advice.Effect;
import org.stoutwork.joint.advice.Note;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.NailCapacity;
import org.stoutwork.joint.screwed.Nailing;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.setting.GlueClass;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.working.Pad;

class NailAndGlueTest {

  private static final TimberStrength WOOD =
      new TimberStrength(27, 16, 0.4, 19, 3.1, 2.6, 12.3, 540, 0.57, true, 11500, 96);
  private static final StrengthFamily EC5 = new StrengthFamily.PartialFactors(0.9, 1.3, 1.25);
  private static final StrengthFamily NDS = new StrengthFamily.Allowable(1.6, 2.3);

  private static JointLimit limit(
      StrengthFamily family, double d, double length, boolean end, double pilot, String failure) {
    Nailing nailing = new Nailing(new Nail(d, length, 2 * d, 600), 11, WOOD, WOOD, end, pilot);
    return NailCapacity.utilisations(nailing, family, RowForces.one(60, 90), List.of(), true)
        .stream()
        .filter(l -> l.failure().equals(failure))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_nail_pulled_by_hand_calculation_carries_what_the_code_says() {
    // f_ax,k = 20e-6 · 540² = 5.832 MPa; 2.1 mm × 34 mm, more than 12 d; × 0.9/1.3.
    double expected = 20e-6 * 540 * 540 * 2.1 * 34 * 0.9 / 1.3;
    assertEquals(
        expected, limit(EC5, 2.1, 45, false, 1.5, "nail pulling out").capacity(), 1e-9 * expected);
  }

  @Test
  void end_grain_holds_no_pulled_nail_and_a_third_of_the_shear() {
    assertEquals(0, limit(EC5, 2.1, 45, true, 1.5, "nail pulling out").capacity());
    assertEquals(0, limit(NDS, 2.1, 45, true, 1.5, "nail pulling out").capacity());
    double side = limit(EC5, 2.1, 45, false, 1.5, "nail yielding across").capacity();
    double end = limit(EC5, 2.1, 45, true, 1.5, "nail yielding across").capacity();
    assertEquals(side / 3, end, 1e-9 * side);
  }

  @Property
  void no_nail_carries_less_for_being_longer(
      @ForAll @DoubleRange(min = 30, max = 50) double length,
      @ForAll @DoubleRange(min = 0, max = 20) double more) {
    for (StrengthFamily family : new StrengthFamily[] {EC5, NDS}) {
      for (String failure : new String[] {"nail pulling out", "nail yielding across"}) {
        double shorter = limit(family, 2.1, length, false, 1.5, failure).capacity();
        double longer = limit(family, 2.1, length + more, false, 1.5, failure).capacity();
        assertTrue(longer >= shorter * (1 - 1e-12), failure);
      }
    }
  }

  @Test
  void dense_wood_asks_for_a_drilled_hole_that_still_holds() {
    assertTrue(limit(EC5, 2.1, 45, false, 0, "hole drilled for the nail").utilisation() > 1);
    assertTrue(limit(EC5, 2.1, 45, false, 1.47, "hole drilled for the nail").utilisation() < 1);
    assertTrue(limit(EC5, 2.1, 45, false, 2, "hole drilled for the nail").utilisation() > 1);
    assertThrows(
        IllegalArgumentException.class, () -> limit(EC5, 2.1, 45, false, 2.4, "nail pulling out"));
    for (double gravity : new double[] {0.38, 0.55, 0.71}) {
      PilotHoles holes = PilotHoles.coachScrew(gravity);
      assertTrue(holes.least() < 2.0 / 3 && 2.0 / 3 < holes.most());
    }
  }

  @Property
  void no_washer_bears_more_when_its_hole_grows(
      @ForAll @DoubleRange(min = 6, max = 12) double bolt,
      @ForAll @DoubleRange(min = 0, max = 6) double more) {
    double tight = Heads.washer(Pad.blank(), new Washer(41, bolt, 4), 3.1);
    double wide = Heads.washer(Pad.blank(), new Washer(41, bolt + more, 4), 3.1);
    assertTrue(wide <= tight);
    assertTrue(HoleFit.FITTED.diameter(bolt) < HoleFit.CLEARANCE.diameter(bolt));
    assertTrue(HoleFit.CLEARANCE.diameter(bolt) < HoleFit.OVERSIZE.diameter(bolt));
  }

  @Test
  void glue_that_creeps_is_taken_with_the_factor_of_permanent_load() {
    StrengthFamily.PartialFactors lasting =
        (StrengthFamily.PartialFactors)
            GlueDesign.permanent(new StrengthFamily.PartialFactors(0.7, 1.3, 1.25));
    assertEquals(0.6, lasting.kMod());
    StrengthFamily.Allowable allowable = (StrengthFamily.Allowable) GlueDesign.permanent(NDS);
    assertEquals(0.9, allowable.loadDuration());
  }

  @Test
  void a_line_is_no_stronger_than_the_class_of_its_glue() {
    double limit = GlueDesign.classLimit(Pad.blank(), GlueClass.D3, EC5, 99);
    assertEquals(10 * 0.9 / 1.3, limit, 1e-12);
    assertFalse(GlueClass.D3.structural());
    assertTrue(GlueClass.STRUCTURAL_I.wettest() > GlueClass.D4.wettest());
  }

  @Test
  void the_effect_of_advice_is_calculated_and_empty_where_it_is_followed() {
    Joint dowelled = new Housing(9, true);
    Optional<Effect> deeper = Effect.of(new Note(Advice.HOUSING, 0.16), dowelled, null);
    assertEquals(0.2 / 0.16, deeper.orElseThrow().ratio(), 1e-12);
    assertTrue(Effect.of(new Note(Advice.HOUSING, 0.25), dowelled, null).isEmpty());
    double weaker = Effect.of(new Note(Advice.PEG, 0.22), dowelled, null).orElseThrow().ratio();
    assertEquals(Math.pow(0.33 / 0.22, 2), weaker, 1e-12);
  }
}
