package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.glue.GlueLine;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.joint.tenon.ShoulderTurning;
import org.stoutwork.working.Pad;

class GlueTurningTest {

  private static final Pad PAD = Pad.blank();

  @Property(tries = 30)
  void sums_over_a_rectangle_are_the_integrals_they_stand_for(
      @ForAll @DoubleRange(min = 5, max = 100) double a,
      @ForAll @DoubleRange(min = 5, max = 100) double b) {
    int n = 400;
    double arms = 0;
    double push = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double x = (i + 0.5) * a / n;
        double y = (j + 0.5) * b / n;
        double r = Math.hypot(x, y);
        arms += r;
        push += y / r;
      }
    }
    double cell = a * b / ((double) n * n);
    assertEquals(arms * cell, GlueTurning.armSum(PAD, a, b), 1e-4 * arms * cell);
    assertEquals(push * cell, GlueTurning.pushSum(PAD, a, b), 1e-4 * push * cell);
  }

  @Property
  void a_line_at_its_strength_everywhere_carries_more_than_one_that_only_begins_to_fail(
      @ForAll @DoubleRange(min = 20, max = 90) double h,
      @ForAll @DoubleRange(min = 20, max = 90) double l,
      @ForAll @DoubleRange(min = 0, max = 40) double s) {
    double polar = ShoulderTurning.polar(PAD, l, s, s + h);
    double elastic = GlueTurning.elastic(PAD, 4, polar, Math.hypot(l, h + s));
    double plastic = GlueTurning.plastic(PAD, 4, ShoulderTurning.arms(PAD, l, s, s + h));
    assertTrue(plastic > elastic);
    assertTrue(plastic < 4 * 2 * h * l * Math.hypot(l, h + s));
  }

  @Property
  void glue_strength_falls_from_long_grain_to_a_third_across_it(
      @ForAll @DoubleRange(min = 1, max = 20) double shear,
      @ForAll @DoubleRange(min = 0, max = 89) double degrees) {
    double here = GlueLine.angled(PAD, shear, degrees);
    assertTrue(GlueLine.angled(PAD, shear, degrees + 1) < here);
    assertEquals(shear, GlueLine.angled(PAD, shear, 0), 1e-12);
    assertEquals(GlueLine.crossed(PAD, shear), GlueLine.angled(PAD, shear, 90), 1e-9 * shear);
  }

  @Test
  void design_without_a_mean_uses_the_design_shear_of_the_wood() {
    double found = GlueDesign.crossed(PAD, 0, 2.6, Samples.PARTIAL);
    assertEquals(0.9 * 2.6 / 3, found, 1e-12);
  }

  @Property
  void two_equal_boards_glued_into_one_shear_as_a_solid_one_at_mid_depth(
      @ForAll @DoubleRange(min = 20, max = 90) double b,
      @ForAll @DoubleRange(min = 20, max = 120) double h) {
    double first = b * h / 2 * h / 4;
    double found = Laminations.shear(PAD, 1000, first, b * h * h * h / 12, b);
    assertEquals(1.5 * 1000 / (b * h), found, 1e-9);
  }
}
