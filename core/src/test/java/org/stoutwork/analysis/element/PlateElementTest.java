package org.stoutwork.analysis.element;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelSection;

class PlateElementTest {
  private static final PanelSection OAK =
      PanelSection.solid(new PanelMaterial(11000, 450, 690, 640, 120, 0.35, 680), 38);

  private static double[] eigenvalues(double[] k, int n) {
    double[][] rows = new double[n][n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(k, i * n, rows[i], 0, n);
    }
    double[] values = new EigenDecomposition(new Array2DRowRealMatrix(rows)).getRealEigenvalues();
    java.util.Arrays.sort(values);
    return values;
  }

  private static double[] times(double[] k, double[] u) {
    double[] f = new double[u.length];
    for (int i = 0; i < u.length; i++) {
      for (int j = 0; j < u.length; j++) {
        f[i] += k[i * u.length + j] * u[j];
      }
    }
    return f;
  }

  private static double energy(double[] k, double[] u) {
    double[] f = times(k, u);
    double sum = 0;
    for (int i = 0; i < u.length; i++) {
      sum += f[i] * u[i] / 2;
    }
    return sum;
  }

  @Test
  void a_plate_element_has_three_rigid_motions_and_no_other_free_one() {
    double[] values = eigenvalues(new PlateBending(83, 41, OAK).stiffness(), 12);
    double largest = values[11];
    assertTrue(Math.abs(values[2]) < 1e-9 * largest, "third " + values[2]);
    assertTrue(values[3] > 1e-9 * largest, "fourth " + values[3]);
  }

  @Test
  void a_membrane_element_has_three_rigid_motions_and_no_other_free_one() {
    double[] values = eigenvalues(new PlateMembrane(83, 41, OAK).stiffness(), 12);
    double largest = values[11];
    assertTrue(Math.abs(values[2]) < 1e-9 * largest, "third " + values[2]);
    assertTrue(values[3] > 1e-6 * largest, "fourth " + values[3]);
  }

  @Test
  void an_even_curvature_has_the_energy_of_theory() {
    double a = 70;
    double b = 110;
    double curvature = 3e-6;
    double[] u = new double[12];
    double[][] corners = {{0, 0}, {a, 0}, {a, b}, {0, b}};
    for (int n = 0; n < 4; n++) {
      double x = corners[n][0] - a / 2;
      u[3 * n] = -curvature * x * x / 2;
      u[3 * n + 2] = curvature * x;
    }
    double expected = OAK.d11() * curvature * curvature * a * b / 2;
    double found = energy(new PlateBending(a, b, OAK).stiffness(), u);
    assertEquals(expected, found, 1e-9 * expected);
  }

  @Test
  void an_even_twist_has_the_energy_of_theory() {
    double a = 70;
    double b = 110;
    double twist = 2e-6;
    double[] u = new double[12];
    double[][] corners = {{0, 0}, {a, 0}, {a, b}, {0, b}};
    for (int n = 0; n < 4; n++) {
      double x = corners[n][0];
      double y = corners[n][1];
      u[3 * n] = twist * x * y;
      u[3 * n + 1] = twist * x;
      u[3 * n + 2] = -twist * y;
    }
    double expected = OAK.d66() * 4 * twist * twist * a * b / 2;
    double found = energy(new PlateBending(a, b, OAK).stiffness(), u);
    assertEquals(expected, found, 1e-9 * expected);
  }

  @Test
  void bending_in_the_plane_is_exact_in_one_membrane_element() {
    double a = 70;
    double b = 110;
    double curvature = 3e-6;
    double[] u = new double[12];
    double[][] corners = {{0, 0}, {a, 0}, {a, b}, {0, b}};
    for (int n = 0; n < 4; n++) {
      double x = corners[n][0] - a / 2;
      double y = corners[n][1] - b / 2;
      // Plane stress with εx = -κ y and σy = 0: εy = ν κ y.
      double nu = OAK.c12() / OAK.c22();
      u[3 * n] = -curvature * x * y;
      u[3 * n + 1] = curvature * (x * x / 2 + nu * y * y / 2);
      u[3 * n + 2] = curvature * x;
    }
    double youngTimesThickness = OAK.c11() - OAK.c12() * OAK.c12() / OAK.c22();
    double expected = youngTimesThickness * curvature * curvature * a * Math.pow(b, 3) / 12 / 2;
    double found = energy(new PlateMembrane(a, b, OAK).stiffness(), u);
    assertEquals(expected, found, 1e-9 * expected);
  }

  @Test
  void forces_at_the_middle_follow_the_convention_of_signs() {
    double a = 70;
    double b = 110;
    double[] u = new double[12];
    double[][] corners = {{0, 0}, {a, 0}, {a, b}, {0, b}};
    // A sagging strip: w has its lowest value in the middle.
    for (int n = 0; n < 4; n++) {
      double x = corners[n][0] - a / 2;
      u[3 * n] = 1e-6 * x * x / 2;
      u[3 * n + 2] = -1e-6 * x;
    }
    double mx = 0;
    double my = 0;
    double[][] rows = new PlateBending(a, b, OAK).forcesAtMiddle();
    for (int k = 0; k < 12; k++) {
      mx += rows[0][k] * u[k];
      my += rows[1][k] * u[k];
    }
    assertEquals(OAK.d11() * 1e-6, mx, 1e-9 * mx);
    assertEquals(OAK.d12() * 1e-6, my, 1e-9 * mx);
  }

  @Test
  void principal_stresses_are_the_ends_of_the_circle() {
    PlatePrincipal p = new PlateForces(90, -30, 80, 0, 0).principalMoments();
    assertEquals(130, p.larger(), 1e-12);
    assertEquals(-70, p.smaller(), 1e-12);
    assertEquals(Math.atan2(160, 120) / 2, p.angle(), 1e-12);
    assertEquals(
        6 * 130 / 100.0, new PlateForces(90, -30, 80, 0, 0).principalStresses(10).larger(), 1e-12);
  }
}
