package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.PanelSection;

/**
 * A rectangular element for stretching and shearing in its own plane, with a rotation about the
 * normal at each corner, so that it can share nodes with beams.
 *
 * <p>Bilinear displacements with the four quadratic modes of E. L. Wilson and others (in Fenves et
 * al., <em>Numerical and Computer Methods in Structural Mechanics</em>, 1973) condensed out, which
 * makes bending in the plane exact on a rectangle; the corner rotations follow the rotation of the
 * material by the penalty of T. J. R. Hughes and F. Brezzi, "On drilling degrees of freedom",
 * <em>Computer Methods in Applied Mechanics and Engineering</em> 72 (1989), with the shear
 * stiffness as its factor.
 *
 * <p>Twelve unknowns, u, v, θz at the corners (0,0), (a,0), (a,b), (0,b).
 */
public final class PlateMembrane {
  /** Number of unknowns. */
  public static final int SIZE = 12;

  private static final int WITH_MODES = 16;
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
   */
  public PlateMembrane(double a, double b, PanelSection section) {
    if (!(a > 0) || !(b > 0)) {
      throw new IllegalArgumentException(
          "a plate element needs sides above 0 mm, not " + a + " and " + b);
    }
    this.a = a;
    this.b = b;
    this.section = section;
  }

  /** Stiffness, N, mm, rad, row by row. */
  public double[] stiffness() {
    double[][] k = new double[WITH_MODES][WITH_MODES];
    for (int i = -1; i <= 1; i += 2) {
      for (int j = -1; j <= 1; j += 2) {
        addPoint(k, strain(i * GAUSS, j * GAUSS));
      }
    }
    condense(k);
    double[] flat = new double[SIZE * SIZE];
    for (int r = 0; r < SIZE; r++) {
      for (int c = 0; c < SIZE; c++) {
        flat[r * SIZE + c] = (k[r][c] + k[c][r]) / 2;
      }
    }
    return flat;
  }

  private void addPoint(double[][] k, double[][] e) {
    double weight = a * b / 4;
    for (int r = 0; r < WITH_MODES; r++) {
      double sx = section.c11() * e[0][r] + section.c12() * e[1][r];
      double sy = section.c12() * e[0][r] + section.c22() * e[1][r];
      double sxy = section.c66() * e[2][r];
      double turn = section.c66() * e[3][r];
      for (int c = 0; c < WITH_MODES; c++) {
        k[r][c] += weight * (sx * e[0][c] + sy * e[1][c] + sxy * e[2][c] + turn * e[3][c]);
      }
    }
  }

  /** Rows εx, εy, γxy and material rotation minus corner rotation, per unknown and mode. */
  private double[][] strain(double xi, double eta) {
    double[][] e = new double[4][WITH_MODES];
    for (int n = 0; n < 4; n++) {
      double dx = SIGN_X[n] * (1 + SIGN_Y[n] * eta) / (2 * a);
      double dy = SIGN_Y[n] * (1 + SIGN_X[n] * xi) / (2 * b);
      put(e, 3 * n, dx, dy);
      e[3][3 * n + 2] = -(1 + SIGN_X[n] * xi) * (1 + SIGN_Y[n] * eta) / 4;
    }
    put(e, SIZE, -4 * xi / a, 0);
    put(e, SIZE + 2, 0, -4 * eta / b);
    return e;
  }

  /** A shape with the given slopes used for u at {@code at} and for v at {@code at} + 1. */
  private static void put(double[][] e, int at, double dx, double dy) {
    e[0][at] = dx;
    e[2][at] = dy;
    e[3][at] = -dy / 2;
    e[1][at + 1] = dy;
    e[2][at + 1] = dx;
    e[3][at + 1] = dx / 2;
  }

  /** Eliminates the modes, last first. */
  private static void condense(double[][] k) {
    for (int m = WITH_MODES - 1; m >= SIZE; m--) {
      for (int r = 0; r < m; r++) {
        double factor = k[r][m] / k[m][m];
        for (int c = 0; c < m; c++) {
          k[r][c] -= factor * k[m][c];
        }
      }
    }
  }
}
