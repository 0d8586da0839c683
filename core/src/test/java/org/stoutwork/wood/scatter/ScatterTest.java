package org.stoutwork.wood.scatter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.wood.ClearProperty;

class ScatterTest {

  @Property
  void a_lognormal_keeps_its_mean_and_its_low_value_lies_below_it(
      @ForAll @DoubleRange(min = 0.5, max = 20000) double mean,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double v) {
    Lognormal d = Lognormal.of(mean, v);
    assertEquals(mean, d.mean(), mean * 1e-12);
    assertTrue(d.exclusion5() < mean);
    assertTrue(d.exclusion5() > mean * (1 - 1.645 * v), "lognormal tails are thinner below");
    assertEquals(v, Math.sqrt(Math.expm1(d.logDeviation() * d.logDeviation())), 1e-12);
  }

  @Test
  void stiffness_and_strength_go_together_as_far_as_the_correlation_says() {
    JointScatter clear = Variability.load().clearWood(12300, 105);
    assertEquals(0.8, clear.correlation());
    double z = 1.37;
    double together = clear.strengthAt(z, 0);
    assertEquals(clear.strength().at(0.8 * z), together, 1e-9);
    assertEquals(clear.strength().at(0.6 * z), clear.strengthAt(0, z), 1e-9);
    assertTrue(clear.strengthAt(-z, 0) < together);
  }

  @Test
  void graded_timber_scatters_less_in_stiffness_and_more_in_strength_than_clear_wood() {
    Variability table = Variability.load();
    JointScatter graded = table.gradedTimber(11000, 40);
    JointScatter clear = table.clearWood(11000, 40);
    assertTrue(graded.stiffness().logDeviation() < clear.stiffness().logDeviation());
    assertTrue(graded.strength().logDeviation() > clear.strength().logDeviation());
  }

  @Test
  void a_property_without_a_tabulated_scatter_and_bad_parameters_are_refused() {
    assertEquals(0.16, Variability.load().coefficient(ClearProperty.BENDING).value(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> Lognormal.of(-1, 0.2));
    assertThrows(
        IllegalArgumentException.class,
        () -> new JointScatter(Lognormal.of(1, 0.1), Lognormal.of(1, 0.1), 1.2));
    assertThrows(IllegalArgumentException.class, () -> Variability.load().named("cov_colour"));
  }
}
