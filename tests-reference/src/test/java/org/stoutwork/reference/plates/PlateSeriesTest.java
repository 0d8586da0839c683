package org.stoutwork.reference.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelEdge;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.PanelSupport;
import org.stoutwork.analysis.solve.PanelPointResult;
import org.stoutwork.analysis.solve.PanelResult;
import org.stoutwork.analysis.solve.PanelSolver;

/**
 * Plates against series worked out in {@link PlateSeries} and against coefficients of S. P.
 * Timoshenko, S. Woinowsky-Krieger, <em>Theory of Plates and Shells</em>, 2nd ed. (from memory).
 */
class PlateSeriesTest {
  private static final PanelMaterial WOOD = new PanelMaterial(11000, 450, 690, 690, 120, 0.35, 0);

  private static PanelBuilder supported(double a, double b, double h, PanelMaterial material) {
    PanelBuilder builder = Panel.builder("plate", a, b, h).material(material);
    for (PanelEdge edge : PanelEdge.values()) {
      builder.support(PanelSupport.hard(edge.line(a, b)));
    }
    return builder;
  }

  private static PanelResult pressed(Panel panel, double q) {
    return PanelSolver.solve(panel, List.of(PanelLoad.pressure("plate", q)));
  }

  @Test
  void table_8_coefficients_of_the_simply_supported_plate_are_met() {
    // Table 8, ν = 0.3: b/a, w D / q a^4, Mx / q a², My / q a², Qx / q a at the long side.
    double[][] table = {
      {1.0, 0.00406, 0.0479, 0.0479, 0.338},
      {1.5, 0.00772, 0.0812, 0.0498, 0.424},
      {2.0, 0.01013, 0.1017, 0.0464, 0.465}
    };
    double a = 600;
    double q = 0.002;
    for (double[] row : table) {
      double b = row[0] * a;
      Panel panel =
          supported(a, b, 10, PanelMaterial.isotropic(11000, 0.3, 0))
              .thin(true)
              .report(a / 2, b / 2)
              .report(0, b / 2)
              .build();
      double d = 11000 * 1000 / (12 * 0.91);
      PanelResult result = pressed(panel, q);
      PanelPointResult middle = result.report().get(0);
      // The table is rounded to three figures.
      assertEquals(row[1], -middle.w() * d / (q * Math.pow(a, 4)), 0.00001);
      assertEquals(row[2], middle.forces().mx() / (q * a * a), 0.0001);
      assertEquals(row[3], middle.forces().my() / (q * a * a), 0.0001);
      assertEquals(row[4], result.report().get(1).forces().qx() / (q * a), 0.01);
    }
  }

  @Test
  void a_thick_orthotropic_plate_follows_naviers_series_in_all_resultants() {
    double a = 1300;
    double b = 700;
    double h = 80;
    Panel panel =
        supported(a, b, h, WOOD)
            .report(a / 2, b / 2)
            .report(a / 4, 200)
            .report(0, b / 2)
            .report(a / 2, 0)
            .build();
    double q = 0.013;
    PanelSection s = PanelSection.solid(WOOD, h);
    for (PanelPointResult point : pressed(panel, q).report()) {
      PlateSeries.Values exact = PlateSeries.navier(s, a, b, q, point.x(), point.y(), 399);
      assertEquals(exact.w(), -point.w(), 1e-4 * 1.5);
      assertEquals(exact.mx(), point.forces().mx(), 2e-3 * 1000);
      assertEquals(exact.my(), point.forces().my(), 2e-3 * 1000);
      assertEquals(exact.qx(), point.forces().qx(), 1e-2 * q * b / 2);
      assertEquals(exact.qy(), point.forces().qy(), 1e-2 * q * b / 2);
    }
  }

  @Test
  void levys_plate_with_two_free_sides_is_met() {
    double a = 1100;
    double b = 740;
    double h = 12;
    double e = 11000;
    double nu = 0.3;
    Panel panel =
        Panel.builder("plate", a, b, h)
            .material(PanelMaterial.isotropic(e, nu, 0))
            .thin(true)
            .support(PanelSupport.hard(PanelEdge.LEFT.line(a, b)))
            .support(PanelSupport.hard(PanelEdge.RIGHT.line(a, b)))
            .report(a / 2, b / 2)
            .report(a / 2, 0)
            .report(300, b)
            .build();
    double q = 0.0015;
    double d = e * h * h * h / (12 * (1 - nu * nu));
    for (PanelPointResult point : pressed(panel, q).report()) {
      double exact = PlateSeries.levySimpleFree(d, nu, a, b, q, point.x(), point.y() - b / 2, 99);
      assertEquals(exact, -point.w(), 2e-4 * exact);
    }
  }

  @Test
  void the_levy_series_itself_gives_the_published_coefficients() {
    // Square plate, ν = 0.3: 0.01309 at the middle, 0.01501 at the middle of a free side.
    assertEquals(0.01309, PlateSeries.levySimpleFree(1, 0.3, 1, 1, 1, 0.5, 0, 99), 0.000006);
    assertEquals(0.01501, PlateSeries.levySimpleFree(1, 0.3, 1, 1, 1, 0.5, 0.5, 99), 0.000006);
  }

  @Test
  void the_error_falls_with_the_square_of_the_size_and_faster_when_extrapolated() {
    double a = 1300;
    double b = 700;
    double q = 0.013;
    for (double h : new double[] {7, 80}) {
      PanelSection s = PanelSection.solid(WOOD, h);
      PlateSeries.Values exact = PlateSeries.navier(s, a, b, q, a / 2, b / 2, 599);
      double[] plain = new double[3];
      double[] extrapolated = new double[3];
      double[] moment = new double[3];
      for (int k = 0; k < 3; k++) {
        int n = 4 << k;
        Panel panel =
            supported(a, b, h, WOOD).mesh(new PanelMesh.Even(n, n)).report(a / 2, b / 2).build();
        PanelResult result = pressed(panel, q);
        plain[k] = Math.abs(-result.field().wAt(a / 2, b / 2) / exact.w() - 1);
        extrapolated[k] = Math.abs(-result.report().get(0).w() / exact.w() - 1);
        moment[k] = Math.abs(result.field().forcesAt(a / 2, b / 2).mx() / exact.mx() - 1);
      }
      for (int k = 0; k < 2; k++) {
        double order = Math.log(plain[k] / plain[k + 1]) / Math.log(2);
        assertTrue(order > 1.85 && order < 2.3, "h = " + h + ", order of w " + order);
        assertTrue(extrapolated[k] < plain[k] / 5, "extrapolated " + extrapolated[k]);
      }
      double ofMoment = Math.log(moment[1] / moment[2]) / Math.log(2);
      assertTrue(ofMoment > 1.8, "h = " + h + ", order of Mx " + ofMoment);
    }
  }
}
