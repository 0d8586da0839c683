package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.PanelSection;

/**
 * A rectangular plate element with four corners for bending and transverse shear: bilinear
 * deflection and rotations, and shear strains that are tied to those at the middles of the sides,
 * so that it does not lock however thin the plate is.
 *
 * <p>The mixed interpolation of K. J. Bathe and E. N. Dvorkin, "A four-node plate bending element
 * based on Mindlin/Reissner plate theory and a mixed interpolation", <em>International Journal for
 * Numerical Methods in Engineering</em> 21 (1985), on a rectangle, where it needs no mapping.
 *
 * <p>Twelve unknowns, w, θx, θy at the corners (0,0), (a,0), (a,b), (0,b): w along the normal, θ
 * right-handed about the sides. A point at height z above the middle moves by z θy along and by -z
 * θx across. Curvatures are κx = ∂θy/∂x, κy = -∂θx/∂y, κxy = ∂θy/∂y - ∂θx/∂x; shear strains γx =
 * ∂w/∂x + θy, γy = ∂w/∂y - θx. Stress resultants follow the {@link PlateForces} convention.
 */
public final class PlateBending {
  /** Number of unknowns. */
  public static final int SIZE = 12;

  private static final double GAUSS = 1 / Math.sqrt(3);
  private static final int[] SIGN_X = {-1, 1, 1, -1};
  private static final int[] SIGN_Y = {-1, -1, 1, 1};

  private final double a;
  private final double b;
  private final PanelSection section;

  /**
   * Makes the element.
   *
   * @param a side along, mm
   * @param b side across, mm
   * @param section what it resists
   * @throws IllegalArgumentException for a side not above zero
   */
  public PlateBending(double a, double b, PanelSection section) {
    if (!(a > 0) || !(b > 0)) {
      throw new IllegalArgumentException(
          "a plate element needs sides above 0 mm, not " + a + " and " + b);
    }
    this.a = a;
    this.b = b;
    this.section = section;
  }

  /** Stiffness by 2 × 2 Gauss points, exact for a rectangle; N, mm, rad, row by row. */
  public double[] stiffness() {
    double[] k = new double[SIZE * SIZE];
    double weight = a * b / 4;
    for (int i = -1; i <= 1; i += 2) {
      for (int j = -1; j <= 1; j += 2) {
        double[][] strain = strain(i * GAUSS, j * GAUSS);
        double[][] stress = stress(strain);
        for (int r = 0; r < SIZE; r++) {
          for (int c = 0; c < SIZE; c++) {
            double sum = 0;
            for (int s = 0; s < 5; s++) {
              sum += strain[s][r] * stress[s][c];
            }
            k[r * SIZE + c] += weight * sum;
          }
        }
      }
    }
    symmetrise(k);
    return k;
  }

  private static void symmetrise(double[] k) {
    for (int r = 0; r < SIZE; r++) {
      for (int c = 0; c < r; c++) {
        double mean = (k[r * SIZE + c] + k[c * SIZE + r]) / 2;
        k[r * SIZE + c] = mean;
        k[c * SIZE + r] = mean;
      }
    }
  }

  /**
   * Rows Mx, My, Mxy, Qx, Qy per unknown at the middle of the element, the place where they are
   * most accurate.
   */
  public double[][] forcesAtMiddle() {
    double[][] rows = stress(strain(0, 0));
    for (double[] row : rows) {
      for (int c = 0; c < SIZE; c++) {
        row[c] = -row[c];
      }
    }
    return rows;
  }

  /** Rows κx, κy, κxy, γx, γy per unknown at (ξ, η), each between -1 and 1. */
  private double[][] strain(double xi, double eta) {
    double[][] s = new double[5][SIZE];
    for (int n = 0; n < 4; n++) {
      double dx = SIGN_X[n] * (1 + SIGN_Y[n] * eta) / (2 * a);
      double dy = SIGN_Y[n] * (1 + SIGN_X[n] * xi) / (2 * b);
      int w = 3 * n;
      int tx = w + 1;
      int ty = w + 2;
      s[0][ty] = dx;
      s[1][tx] = -dy;
      s[2][ty] = dy;
      s[2][tx] = -dx;
      // Sampled at the middles of the sides y = const and interpolated across.
      s[3][w] = dx;
      s[3][ty] = (1 + SIGN_Y[n] * eta) / 4;
      // Sampled at the middles of the sides x = const.
      s[4][w] = dy;
      s[4][tx] = -(1 + SIGN_X[n] * xi) / 4;
    }
    return s;
  }

  private double[][] stress(double[][] e) {
    double[][] s = new double[5][SIZE];
    for (int c = 0; c < SIZE; c++) {
      s[0][c] = section.d11() * e[0][c] + section.d12() * e[1][c];
      s[1][c] = section.d12() * e[0][c] + section.d22() * e[1][c];
      s[2][c] = section.d66() * e[2][c];
      s[3][c] = section.a55() * e[3][c];
      s[4][c] = section.a44() * e[4][c];
    }
    return s;
  }
}
