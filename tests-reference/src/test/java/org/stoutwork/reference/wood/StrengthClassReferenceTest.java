package org.stoutwork.reference.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/** Strength classes against EN 338:2016 Tables 1 and 3, and the relations of EN 384:2016. */
class StrengthClassReferenceTest {

  private static final Map<String, ClassProperty> COLUMNS =
      Map.ofEntries(
          Map.entry("f_m", ClassProperty.BENDING),
          Map.entry("f_t0", ClassProperty.TENSION_PARALLEL),
          Map.entry("f_t90", ClassProperty.TENSION_PERPENDICULAR),
          Map.entry("f_c0", ClassProperty.COMPRESSION_PARALLEL),
          Map.entry("f_c90", ClassProperty.COMPRESSION_PERPENDICULAR),
          Map.entry("f_v", ClassProperty.SHEAR),
          Map.entry("E_mean_GPa", ClassProperty.MODULUS_MEAN),
          Map.entry("E_05_GPa", ClassProperty.MODULUS_LOW),
          Map.entry("E_90_GPa", ClassProperty.MODULUS_ACROSS),
          Map.entry("G_GPa", ClassProperty.SHEAR_MODULUS),
          Map.entry("rho_k", ClassProperty.DENSITY_LOW),
          Map.entry("rho_mean", ClassProperty.DENSITY_MEAN));

  private final WoodCatalogue woods = WoodCatalogue.load();

  @Test
  void all_26_classes_have_the_values_of_the_standard() {
    int cells = 0;
    for (Row row : Table.beside(getClass(), "en338-2016.csv").rows()) {
      StrengthClass ours = (StrengthClass) woods.byKey(row.required("class")).orElseThrow();
      for (Map.Entry<String, ClassProperty> column : COLUMNS.entrySet()) {
        ClassProperty what = column.getValue();
        double expected = row.requiredNumber(column.getKey()) * what.scale();
        assertEquals(expected, ours.value(what).value(), 1e-9, ours.key() + " " + what);
        cells++;
      }
    }
    assertEquals(26 * 12, cells);
    assertEquals(26, woods.strengthClasses().size());
  }

  /** EN 384:2016 Table 2, from memory; the standard rounds its strengths to 0.5 or 1 MPa. */
  @Test
  void the_classes_follow_the_relations_between_properties() {
    for (StrengthClass one : woods.strengthClasses()) {
      boolean soft = one.group() == WoodGroup.SOFTWOOD;
      double fm = of(one, ClassProperty.BENDING);
      double rho = of(one, ClassProperty.DENSITY_LOW);
      double e = of(one, ClassProperty.MODULUS_MEAN);
      near(one, ClassProperty.TENSION_PARALLEL, soft ? -3.07 + 0.73 * fm : 0.6 * fm, 0.6);
      near(one, ClassProperty.COMPRESSION_PARALLEL, 4.3 * Math.sqrt(fm), 0.6);
      double across = soft ? 0.007 * rho : (rho < 700 ? 0.010 : 0.015) * rho;
      near(one, ClassProperty.COMPRESSION_PERPENDICULAR, across, 0.11);
      near(one, ClassProperty.MODULUS_LOW, (soft ? 0.67 : 0.84) * e, 60);
      near(one, ClassProperty.MODULUS_ACROSS, e / (soft ? 30 : 15), 6);
      near(one, ClassProperty.SHEAR_MODULUS, e / 16, 6);
      near(one, ClassProperty.DENSITY_MEAN, 1.2 * rho, 6);
    }
  }

  private static double of(StrengthClass one, ClassProperty what) {
    return one.value(what).value();
  }

  private static void near(StrengthClass one, ClassProperty what, double value, double rounding) {
    assertTrue(
        Math.abs(of(one, what) - value) <= rounding,
        "%s %s: %s against %s".formatted(one.key(), what, of(one, what), value));
  }
}
