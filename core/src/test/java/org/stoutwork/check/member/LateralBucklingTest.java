package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.section.Rectangle;
import org.stoutwork.working.Pad;

/**
 * LateralOfParts of deep thin members by hand and by its laws: 31 mm × 163 mm unless said
 * otherwise.
 */
class LateralBucklingTest {

  private static final Pad PAD = Pad.blank();

  private static Lateral european(double b, double h, double span, boolean softwood) {
    double length = LateralBuckling.europeanLength(PAD, span, h, true);
    return softwood
        ? LateralBuckling.european(PAD, new Rectangle(b, h), length, true, 24, 7400, 464)
        : LateralBuckling.european(PAD, new Rectangle(b, h), length, false, 40, 10_900, 679);
  }

  private static Lateral american(double b, double h, double span) {
    double length = LateralBuckling.americanLength(PAD, span, h);
    return LateralBuckling.american(PAD, new Rectangle(b, h), length, 4870, 15.3);
  }

  /**
   * l_ef 1514 + 2·163 = 1840. I_2 404 661 mm⁴, I_tor 1 424 726 mm⁴, W_1 137 273 mm³: π√(10 900 ·
   * 404 661 · 679 · 1 424 726)/(1840 · 137 273) = 25.692 MPa; λ = √(40/25.692) = 1.2477; 1.56 −
   * 0.75 λ = 0.6242. Softwood: 0.78 · 31² · 7400/(163 · 1840) = 18.495 MPa; λ 1.1392; 0.7056.
   */
  @Test
  void a_deep_rail_by_partial_factors() {
    assertEquals(1840, LateralBuckling.europeanLength(PAD, 1514, 163, true), 1e-9);
    assertEquals(1514, LateralBuckling.europeanLength(PAD, 1514, 163, false), 1e-9);
    assertEquals(25.692475, european(31, 163, 1514, false).critical(), 1e-5);
    assertEquals(0.624188690, european(31, 163, 1514, false).factor(), 1e-8);
    assertEquals(18.494572, european(31, 163, 1514, true).critical(), 1e-5);
    assertEquals(0.705632454, european(31, 163, 1514, true).factor(), 1e-8);
    assertEquals(european(31, 163, 1514, false), lying());
  }

  private static Lateral lying() {
    return LateralBuckling.european(PAD, new Rectangle(163, 31), 1840, false, 40, 10_900, 679);
  }

  /** 19 × 170, 2143 + 340 long: 7.0473 MPa, λ = 2.3824, 1/λ² = 0.1762. */
  @Test
  void a_very_slender_rail_keeps_its_critical_stress_only() {
    Lateral found = european(19, 170, 2143, false);
    assertEquals(7.047338, found.critical(), 1e-5);
    assertEquals(found.critical() / 40, found.factor(), 1e-12);
    assertEquals(0.1762, found.factor(), 1e-4);
  }

  /**
   * l_e: 2.06 · 1040 = 2142.4 (l/d below 7); 1.63 · 1840 + 3 · 163 = 3488.2; 1.84 · 2540 = 4673.6
   * (l/d above 14.3). R_B² = l_e · 163/31²; F_bE = 1.2 · 4870/R_B².
   */
  @Test
  void a_deep_rail_by_allowable_stresses() {
    assertEquals(2142.4, LateralBuckling.americanLength(PAD, 1040, 163), 1e-9);
    assertEquals(3488.2, LateralBuckling.americanLength(PAD, 1840, 163), 1e-9);
    assertEquals(4673.6, LateralBuckling.americanLength(PAD, 2540, 163), 1e-9);
    assertEquals(0.836726256, american(31, 163, 1040).factor(), 1e-8);
    assertEquals(0.600462940, american(31, 163, 1840).factor(), 1e-8);
    assertEquals(0.462003015, american(31, 163, 2540).factor(), 1e-8);
    assertEquals(9.877444833, american(31, 163, 1840).critical(), 1e-8);
    assertFalse(american(31, 163, 2540).tooSlender());
    // 14 mm thick: R_B = 62.3, more than 50.
    assertTrue(american(14, 163, 2540).tooSlender());
  }

  @Test
  void stout_members_lose_nothing() {
    // R_B² = 4673.6 · 163/82² = 113.294; 1.2 · 4870/113.294.
    assertEquals(1, american(82, 163, 2540).factor(), 0);
    assertEquals(51.5826, american(82, 163, 2540).critical(), 1e-2);
    assertFalse(american(82, 163, 2540).counts());
    assertEquals(Lateral.NONE, american(88, 88, 4000));
    assertTrue(american(81, 163, 2540).factor() < 1);
    assertEquals(1, european(88, 163, 1514, false).factor(), 0);
    assertEquals(Lateral.NONE, european(88, 88, 4000, true));
    assertFalse(european(88, 163, 1514, true).counts());
  }

  @Property
  void what_lateral_buckling_leaves_is_a_part_that_falls_with_length_and_slenderness(
      @ForAll @DoubleRange(min = 12, max = 90) double b,
      @ForAll @DoubleRange(min = 1.02, max = 9) double shape,
      @ForAll @DoubleRange(min = 300, max = 3500) double span,
      @ForAll @DoubleRange(min = 1.01, max = 1.8) double more) {
    double h = shape * b;
    for (int family = 0; family < 3; family++) {
      double factor = factor(family, b, h, span);
      assertTrue(factor > 0 && factor <= 1, "factor " + factor);
      assertTrue(factor(family, b, h, more * span) <= factor + 1e-12);
      assertTrue(factor(family, b, more * h, span) <= factor + 1e-12);
      assertTrue(factor(family, b / more, h, span) <= factor + 1e-12);
      boolean loses = factor < 1;
      assertTrue(!loses || factor(family, b, h, more * span) < factor);
      assertTrue(!loses || factor(family, b / more, h, span) < factor);
    }
  }

  private static double factor(int family, double b, double h, double span) {
    return family == 2 ? american(b, h, span).factor() : european(b, h, span, family == 1).factor();
  }

  @Test
  void impossible_parts_are_refused() {
    assertThrows(IllegalArgumentException.class, () -> new Lateral(0, 12, false));
    assertThrows(IllegalArgumentException.class, () -> new Lateral(1.01, 12, false));
    assertThrows(IllegalArgumentException.class, () -> new Lateral(0.9, 0, false));
  }
}
