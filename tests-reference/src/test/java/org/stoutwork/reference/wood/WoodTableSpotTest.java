package org.stoutwork.reference.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.ServiceClass;
import org.stoutwork.wood.time.TimeFactors;
import org.stoutwork.wood.time.UsDuration;

/** Single values of the other wood tables, each against the document beside it. */
class WoodTableSpotTest {

  private static final List<String> SHRINKAGE_COLUMNS =
      List.of("radial_pct", "tangential_pct", "volumetric_pct", "C_R_per_pct_MC", "C_T_per_pct_MC");

  private final TimeFactors factors = TimeFactors.load();

  @Test
  void shrinkage_elastic_ratios_and_sheets_agree_with_their_documents() {
    int compared = 0;
    for (Row spot : Table.beside(getClass(), "spot-values.csv").rows()) {
      Row ours =
          Table.beside(Wood.class, spot.required("table")).rows().stream()
              .filter(row -> row.required("key").equals(spot.required("key")))
              .findFirst()
              .orElseThrow();
      String column = spot.required("column");
      assertEquals(
          spot.requiredNumber("value"),
          ours.requiredNumber(column),
          1e-12,
          "%s %s, %s".formatted(spot.text("key"), column, spot.text("source")));
      compared++;
    }
    assertEquals(48, compared);
  }

  @Test
  void shrinkage_agrees_cell_by_cell_with_the_pages_of_the_handbook_that_were_read() {
    int compared = 0;
    for (Row page : Table.beside(getClass(), "shrinkage-handbook.csv").rows()) {
      Row ours = shrinkageOf(page.required("key"));
      for (String column : SHRINKAGE_COLUMNS) {
        if (page.number(column).isPresent()) {
          assertEquals(
              page.requiredNumber(column),
              ours.requiredNumber(column),
              1e-12,
              "%s %s".formatted(page.text("key"), column));
          compared++;
        }
      }
    }
    assertEquals(305, compared);
  }

  private static Row shrinkageOf(String key) {
    return Table.beside(Wood.class, "shrinkage.csv").rows().stream()
        .filter(row -> row.required("key").equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** EN 1995-1-1:2004 Table 3.1, as reproduced in a design manual of a professional body. */
  @ParameterizedTest
  @CsvSource({
    "SOLID_TIMBER, '', 1, PERMANENT, 0.60",
    "SOLID_TIMBER, '', 2, MEDIUM, 0.80",
    "SOLID_TIMBER, '', 3, PERMANENT, 0.50",
    "SOLID_TIMBER, '', 3, INSTANTANEOUS, 0.90",
    "LVL, '', 2, LONG, 0.70",
    "PLYWOOD, EN 636-2, 2, SHORT, 0.90",
    "OSB, OSB/3, 1, MEDIUM, 0.70",
    "OSB, OSB/3, 2, MEDIUM, 0.55",
    "PARTICLEBOARD, P5, 2, PERMANENT, 0.20",
    "MDF, MDF.LA, 1, LONG, 0.40"
  })
  void k_mod_is_that_of_the_standard(
      Product product, String grade, int service, DurationClass duration, double expected) {
    ServiceClass at = ServiceClass.numbered(service);
    assertEquals(expected, factors.kMod(product, grade, at, duration).orElseThrow().value());
  }

  /** EN 1995-1-1:2004 Tables 3.2 and 2.3, as quoted alike by several independent publications. */
  @ParameterizedTest
  @CsvSource({
    "SOLID_TIMBER, '', 1, 0.60, 1.30",
    "SOLID_TIMBER, '', 2, 0.80, 1.30",
    "SOLID_TIMBER, '', 3, 2.00, 1.30",
    "LVL, '', 1, 0.60, 1.20",
    "GLULAM, '', 2, 0.80, 1.25",
    "PLYWOOD, EN 636-3, 3, 2.50, 1.20",
    "OSB, OSB/3, 1, 1.50, 1.20",
    "PARTICLEBOARD, P4, 1, 2.25, 1.30",
    "MDF, MDF.LA, 1, 2.25, 1.30"
  })
  void k_def_and_gamma_M_are_those_of_the_standard(
      Product product, String grade, int service, double kDef, double gammaM) {
    ServiceClass at = ServiceClass.numbered(service);
    assertEquals(kDef, factors.kDef(product, grade, at).orElseThrow().value());
    assertEquals(gammaM, factors.gammaM(product).orElseThrow().value());
  }

  /** National Design Specification for Wood Construction, Table 2.3.2. */
  @ParameterizedTest
  @CsvSource({
    "PERMANENT, 0.90",
    "TEN_YEARS, 1.00",
    "TWO_MONTHS, 1.15",
    "SEVEN_DAYS, 1.25",
    "TEN_MINUTES, 1.60",
    "IMPACT, 2.00"
  })
  void the_load_duration_factor_is_that_of_the_specification(UsDuration duration, double expected) {
    assertEquals(expected, factors.cD(duration).value());
  }

  /** Wood Handbook FPL-GTR-190 (2010) Table 5-6. */
  @ParameterizedTest
  @CsvSource({
    "BENDING, 0.16",
    "MODULUS, 0.22",
    "COMPRESSION_PARALLEL, 0.18",
    "COMPRESSION_PERPENDICULAR, 0.28",
    "SHEAR, 0.14",
    "SPECIFIC_GRAVITY, 0.10"
  })
  void the_scatter_of_clear_wood_is_that_of_the_handbook(ClearProperty what, double expected) {
    assertEquals(expected, Variability.load().coefficient(what).value(), 1e-12);
  }

  /** EN 1995-1-1:2004+A1:2008, 6.1.7(2), recommended value for solid timber. */
  @Test
  void the_crack_factor_is_that_of_the_standard() {
    assertEquals(0.67, StrengthClass.CRACK_FACTOR.value());
  }
}
