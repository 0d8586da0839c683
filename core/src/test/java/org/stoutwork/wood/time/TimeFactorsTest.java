package org.stoutwork.wood.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.stoutwork.wood.Product;

class TimeFactorsTest {

  private final TimeFactors factors = TimeFactors.load();

  @Property
  void creep_grows_with_damp_and_shorter_loads_are_borne_better(
      @ForAll ServiceClass service, @ForAll DurationClass duration) {
    double here = factors.kDef(Product.SOLID_TIMBER, "", service).orElseThrow().value();
    double driest =
        factors.kDef(Product.SOLID_TIMBER, "", ServiceClass.CLASS_1).orElseThrow().value();
    assertTrue(here >= driest);
    double mod = factors.kMod(Product.SOLID_TIMBER, "", service, duration).orElseThrow().value();
    double permanent =
        factors
            .kMod(Product.SOLID_TIMBER, "", service, DurationClass.PERMANENT)
            .orElseThrow()
            .value();
    assertTrue(mod >= permanent);
  }

  @Test
  void graded_boards_have_the_factors_of_their_grade() {
    assertEquals(0.40, mod(Product.OSB, "OSB/3", ServiceClass.CLASS_1, DurationClass.PERMANENT));
    assertEquals(0.30, mod(Product.OSB, "OSB/2", ServiceClass.CLASS_1, DurationClass.PERMANENT));
    assertTrue(
        factors
            .kMod(Product.OSB, "OSB/2", ServiceClass.CLASS_2, DurationClass.PERMANENT)
            .isEmpty());
    assertEquals(
        1.5, factors.kDef(Product.OSB, "OSB/3", ServiceClass.CLASS_1).orElseThrow().value());
    assertTrue(factors.kDef(Product.MDF, "MDF.LA", ServiceClass.CLASS_2).isEmpty());
  }

  private double mod(Product product, String grade, ServiceClass service, DurationClass duration) {
    return factors.kMod(product, grade, service, duration).orElseThrow().value();
  }

  @Test
  void a_blow_is_instantaneous_for_partial_factors() {
    assertEquals(
        mod(Product.SOLID_TIMBER, "", ServiceClass.CLASS_1, DurationClass.INSTANTANEOUS),
        mod(Product.SOLID_TIMBER, "", ServiceClass.CLASS_1, DurationClass.IMPACT));
  }

  @Test
  void every_product_but_blockboard_has_a_partial_factor() {
    for (Product product : Product.values()) {
      assertEquals(product != Product.BLOCKBOARD, factors.gammaM(product).isPresent());
    }
    assertEquals(1.3, factors.gammaMConnections().value());
  }

  @Test
  void there_is_no_service_class_four() {
    assertEquals(
        "a service class is 1, 2 or 3; it was 4",
        assertThrows(IllegalArgumentException.class, () -> ServiceClass.numbered(4)).getMessage());
  }

  @Test
  void a_load_cannot_act_for_no_time() {
    assertThrows(IllegalArgumentException.class, () -> new CumulativeLoad(0, 200, 10));
    assertThrows(IllegalArgumentException.class, () -> new CumulativeLoad(25, 200, 10));
  }
}
