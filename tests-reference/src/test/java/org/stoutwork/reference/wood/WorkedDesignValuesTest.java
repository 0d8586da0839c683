package org.stoutwork.reference.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignBasis;
import org.stoutwork.wood.design.DesignConditions;
import org.stoutwork.wood.design.DesignConditions.Situation;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.DesignTables;
import org.stoutwork.wood.design.DesignValues;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.grade.GrowthDefects;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.wood.time.ServiceClass;
import org.stoutwork.working.Pad;

/** Design values worked by hand, line by line, under each basis. */
class WorkedDesignValuesTest {

  private final WoodCatalogue woods = WoodCatalogue.load();
  private final DesignTables tables = DesignTables.load();

  private double value(
      String key, DesignBasis basis, DesignConditions conditions, DesignQuantity what) {
    return DesignValues.of(woods.byKey(key).orElseThrow(), basis, conditions, tables)
        .find(what, Pad.blank())
        .orElseThrow();
  }

  private static DesignConditions at(
      DurationClass duration, ServiceClass service, double moisture, Growth growth) {
    return new DesignConditions(
        LoadDuration.of(duration), service, moisture, Situation.USUAL, growth);
  }

  /**
   * Clear-wood allowable. Northern red oak, clear, 8 % moisture content, short load.
   *
   * <pre>
   * f_m at 12 % 99 MPa, green 57 MPa (FPL-GTR-190 Table 5-3a); M_p = 25 % (Table 5-13)
   * f_m at 8 %  = 99 (99/57)^((12 − 8)/(25 − 12)) = 99 · 1.736842^0.307692 = 117.333 MPa  (eq. 5-3)
   * 5 %         = 117.333 (1 − 1.645 · 0.16)      = 86.451 MPa   (Table 5-6: 16 %; ASTM D2555)
   * over 2.3    =                                   37.587 MPa   (ASTM D245, hardwood, bending)
   * times 1.15  =                                   43.225 MPa   (C_D two months)
   * </pre>
   *
   * With a few small knots drying may add no more than ASTM D245 allows to the green value:
   *
   * <pre>
   * f_m         = min(117.333, 1.35 · 57) = 76.950 MPa
   * 5 %         = 76.950 · 0.7368         = 56.697 MPa
   * over 2.3    =                           24.651 MPa
   * times 0.65  =                           16.023 MPa   (few small knots)
   * times 1.15  =                           18.426 MPa
   * </pre>
   */
  @Test
  void allowable_bending_of_red_oak_by_hand() {
    DesignBasis basis = new DesignBasis.ClearWoodAllowable();
    DesignConditions clear = at(DurationClass.SHORT, ServiceClass.CLASS_1, 8, Growth.CLEAR);
    assertEquals(43.225, value("oak-northern-red", basis, clear, DesignQuantity.BENDING), 0.002);
    Growth knots = Growth.straight(GrowthDefects.FEW_SMALL_KNOTS);
    DesignConditions c = at(DurationClass.SHORT, ServiceClass.CLASS_1, 8, knots);
    assertEquals(18.426, value("oak-northern-red", basis, c, DesignQuantity.BENDING), 0.001);
  }

  /**
   * Clear-wood allowable. Loblolly pine, knotty, grain 1:10, 12 %, long load.
   *
   * <pre>
   * f_c,0 = 49.2 MPa, green 24.2 MPa (FPL-GTR-190 Table 5-3a)
   * f_c,0      = min(49.2, 1.75 · 24.2)   = 42.35 MPa     (drying, ASTM D245)
   * 5 %        = 42.35 (1 − 1.645 · 0.18) = 29.810 MPa
   * over 1.9   =                            15.690 MPa    (ASTM D245, softwood, compression)
   * ratio      = min(0.52 knotty, 0.74 slope 1:10) = 0.52
   * times 0.52 =                             8.159 MPa ; C_D ten years 1.00
   * f_c,90     = min(5.4, 1.50 · 2.7) / 1.67 = 2.425 MPa, whatever the slope and the duration
   * f_v        = min(9.6, 1.13 · 5.9) (1 − 1.645 · 0.14)/2.1 · 0.50 = 1.222 MPa
   * </pre>
   */
  @Test
  void allowable_compression_and_shear_of_loblolly_pine_by_hand() {
    Growth growth = new Growth(GrowthDefects.KNOTTY, OptionalDouble.of(10));
    DesignConditions c = at(DurationClass.LONG, ServiceClass.CLASS_1, 12, growth);
    DesignBasis basis = new DesignBasis.ClearWoodAllowable();
    assertEquals(
        8.159, value("pine-loblolly", basis, c, DesignQuantity.COMPRESSION_PARALLEL), 0.001);
    assertEquals(
        2.425, value("pine-loblolly", basis, c, DesignQuantity.COMPRESSION_PERPENDICULAR), 0.001);
    assertEquals(1.222, value("pine-loblolly", basis, c, DesignQuantity.SHEAR), 0.001);
  }

  /**
   * Partial factors. C24, service class 1, medium duration: f_m,d = 0.80 · 24 / 1.3 = 14.77 MPa (EN
   * 338:2016 Table 1; EN 1995-1-1 Tables 3.1 and 2.3, eq. 2.14).
   */
  @Test
  void design_bending_of_C24_by_hand() {
    DesignConditions c = at(DurationClass.MEDIUM, ServiceClass.CLASS_1, 12, Growth.CLEAR);
    DesignBasis basis = DesignBasis.PartialFactors.recommended();
    assertEquals(14.769, value("C24", basis, c, DesignQuantity.BENDING), 0.001);
  }

  /**
   * Partial factors. D40 in an unheated shed, long duration: f_v,d = 0.70 · 4.2 / 1.3 = 2.262 MPa
   * on 0.67 of the width; f_c,90,d = 0.70 · 5.5 / 1.3 = 2.962 MPa; E_0,05 = 10.9 GPa.
   */
  @Test
  void design_shear_and_bearing_of_D40_by_hand() {
    DesignConditions c = at(DurationClass.LONG, ServiceClass.CLASS_2, 14, Growth.CLEAR);
    DesignBasis basis = DesignBasis.PartialFactors.recommended();
    assertEquals(2.262, value("D40", basis, c, DesignQuantity.SHEAR), 0.001);
    assertEquals(2.962, value("D40", basis, c, DesignQuantity.COMPRESSION_PERPENDICULAR), 0.001);
    assertEquals(10900, value("D40", basis, c, DesignQuantity.MODULUS_LOW), 1e-9);
  }

  /**
   * Partial factors. Birch plywood 18 mm, service class 1, short: across the face grain 0.90 · 34.1
   * / 1.2 = 25.575 MPa.
   */
  @Test
  void design_bending_of_birch_plywood_across_its_face_grain_by_hand() {
    DesignConditions c = at(DurationClass.SHORT, ServiceClass.CLASS_1, 10, Growth.CLEAR);
    DesignBasis basis = DesignBasis.PartialFactors.recommended();
    assertEquals(25.575, value("plywood-birch-18", basis, c, DesignQuantity.BENDING_ACROSS), 0.001);
  }
}
