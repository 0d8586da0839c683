package org.stoutwork.reference.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.stoutwork.analysis.element.PlateForces;
import org.stoutwork.analysis.solve.PanelField;
import org.stoutwork.analysis.solve.PanelPointResult;
import org.stoutwork.analysis.solve.PanelResult;
import org.stoutwork.analysis.solve.PanelSolver;

/**
 * Plates with known answers, {@code plates.csv}: Navier and Levy series and Ritz solutions, with
 * the coefficients of S. P. Timoshenko, S. Woinowsky-Krieger, <em>Theory of Plates and Shells</em>,
 * 2nd ed., named in the column {@code source}. In the file, w is positive downward.
 *
 * <p>Moments are compared at the tolerance of the file, relative to the larger of both moments at
 * the place. The free corners of P18 and P18K are the exception: both moments are zero there by the
 * boundary conditions, while the Ritz figures of the file (up to 15 N mm/mm) satisfy them only in
 * the mean; there the largest moment of the plate is the measure.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlateReferenceTest {
  private double largestDeflection;
  private double largestMomentDifference;

  private static List<String> ids() {
    return PlateCase.all().stream().map(PlateCase::id).distinct().toList();
  }

  private static List<PlateCase> rowsOf(String id) {
    return PlateCase.all().stream().filter(c -> c.id().equals(id)).toList();
  }

  @Test
  void the_file_holds_all_cases() {
    assertEquals(44, PlateCase.all().size());
    assertEquals(22, ids().size());
  }

  @TestFactory
  Stream<DynamicTest> every_case_is_met_at_the_tolerance_of_the_file() {
    return ids().stream().map(id -> DynamicTest.dynamicTest(id, () -> compare(rowsOf(id))));
  }

  private void compare(List<PlateCase> rows) {
    PanelResult result = PanelSolver.solve(rows.get(0).panel(rows), rows.get(0).loads());
    assertTrue(result.meshError() < 2e-3, "mesh error " + result.meshError());
    assertTrue(result.equilibriumError() < 1e-7, "equilibrium " + result.equilibriumError());
    for (int k = 0; k < rows.size(); k++) {
      PlateCase row = rows.get(k);
      PanelPointResult point = result.report().get(k);
      double w = row.number("w_mm");
      double tolerance = row.number("rel_tolerance_same_theory");
      if (w != 0) {
        largestDeflection = Math.max(largestDeflection, Math.abs(-point.w() / w - 1));
      }
      assertEquals(w, -point.w(), tolerance * Math.abs(w) + 1e-12, "w at " + point);
      if (row.has("Mx_Nmm_per_mm")) {
        double mx = row.number("Mx_Nmm_per_mm");
        double my = row.number("My_Nmm_per_mm");
        double scale = Math.max(Math.abs(mx), Math.abs(my));
        if (row.isFreeCorner()) {
          scale = largestMoment(result.field());
        }
        double off =
            Math.max(Math.abs(point.forces().mx() - mx), Math.abs(point.forces().my() - my));
        largestMomentDifference = Math.max(largestMomentDifference, off / scale);
        double allowed = row.number("rel_tolerance_M") * scale;
        assertEquals(mx, point.forces().mx(), allowed, "Mx at " + point);
        assertEquals(my, point.forces().my(), allowed, "My at " + point);
      }
    }
  }

  @AfterAll
  void print() {
    System.out.printf(
        Locale.ROOT,
        "LARGEST plates: deflection %.1e, moments %.1e%n",
        largestDeflection,
        largestMomentDifference);
  }

  private static double largestMoment(PanelField field) {
    double largest = 0;
    for (int i = 0; i < field.countX(); i++) {
      for (int j = 0; j < field.countY(); j++) {
        PlateForces f = field.forces(i, j);
        largest = Math.max(largest, Math.max(Math.abs(f.mx()), Math.abs(f.my())));
      }
    }
    return largest;
  }
}
