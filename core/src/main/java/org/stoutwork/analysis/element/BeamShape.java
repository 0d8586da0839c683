package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Material;

/**
 * Matrices of a beam piece that follow from its shape between its ends: consistent mass and
 * geometric stiffness, both with the exact static shape functions of the Timoshenko beam (J. S.
 * Przemieniecki, <em>Theory of Matrix Structural Analysis</em>, 1968, chapters 11 and 15, extended
 * by shear).
 */
public final class BeamShape {
  // Gauss points on [0, 1]; four integrate degree 7, the mass needs degree 6.
  private static final double[] POINT = {
    0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970262
  };
  private static final double[] WEIGHT = {
    0.17392742256872692, 0.32607257743127305, 0.32607257743127305, 0.17392742256872692
  };

  private static final int[] IN_XY = {1, 5, 7, 11};
  private static final int[] IN_XZ = {2, 4, 8, 10};

  private BeamShape() {}

  /** Mass of a beam over its unknowns, t, t mm, t mm². */
  public static double[] mass(Beam beam, boolean rotary) {
    double rho = beam.material().density() * 1e-12;
    double l = beam.length();
    CrossSection c = beam.section();
    double[][] m = new double[12][12];
    linear(m, 0, rho * c.area() * l);
    linear(m, 3, rho * (c.iy() + c.iz()) * l);
    for (int plane = 0; plane < 2; plane++) {
      double inertia = rotary ? rho * (plane == 0 ? c.iz() : c.iy()) : 0;
      for (int g = 0; g < POINT.length; g++) {
        double[][] shape = shape(beam, plane, POINT[g]);
        rankOne(m, plane, shape[0], rho * c.area() * l * WEIGHT[g]);
        rankOne(m, plane, shape[1], inertia * l * WEIGHT[g]);
      }
    }
    return beam.fromFlexible(m);
  }

  private static void linear(double[][] m, int at, double total) {
    m[at][at] += total / 3;
    m[at + 6][at + 6] += total / 3;
    m[at][at + 6] += total / 6;
    m[at + 6][at] += total / 6;
  }

  /**
   * Geometric stiffness of a beam over its unknowns for an axial force of 1 N (tension); N/mm per
   * N. The force works on the total slope (Engesser), and on the twist with the polar radius.
   */
  public static double[] geometric(Beam beam) {
    double l = beam.length();
    CrossSection c = beam.section();
    double[][] k = new double[12][12];
    double twist = (c.iy() + c.iz()) / c.area() / l;
    k[3][3] += twist;
    k[9][9] += twist;
    k[3][9] -= twist;
    k[9][3] -= twist;
    for (int plane = 0; plane < 2; plane++) {
      for (int g = 0; g < POINT.length; g++) {
        rankOne(k, plane, shape(beam, plane, POINT[g])[2], l * WEIGHT[g]);
      }
    }
    return beam.fromFlexible(k);
  }

  private static void rankOne(double[][] m, int plane, double[] n, double factor) {
    int[] place = plane == 0 ? IN_XY : IN_XZ;
    for (int a = 0; a < 4; a++) {
      for (int b = 0; b < 4; b++) {
        // In the x-z plane the section turns by -ry where the axis rises.
        int sign = plane == 1 && a % 2 != b % 2 ? -1 : 1;
        m[place[a]][place[b]] += sign * factor * n[a] * n[b];
      }
    }
  }

  /** Deflection, section rotation and slope at s = x/L for unit end values (v1, θ1, v2, θ2). */
  private static double[][] shape(Beam beam, int plane, double s) {
    double l = beam.length();
    double p = shearRatio(beam, plane);
    double d = 1 + p;
    double[] v = {
      (1 - 3 * s * s + 2 * s * s * s + p * (1 - s)) / d,
      l * (s - 2 * s * s + s * s * s + p * (s - s * s) / 2) / d,
      (3 * s * s - 2 * s * s * s + p * s) / d,
      l * (s * s * s - s * s - p * (s - s * s) / 2) / d
    };
    double[] turn = {
      6 * (s * s - s) / (l * d),
      (1 - 4 * s + 3 * s * s + p * (1 - s)) / d,
      6 * (s - s * s) / (l * d),
      (3 * s * s - 2 * s + p * s) / d
    };
    double[] slope = {
      (6 * s * s - 6 * s - p) / (l * d),
      (1 - 4 * s + 3 * s * s + p * (1 - 2 * s) / 2) / d,
      (6 * s - 6 * s * s + p) / (l * d),
      (3 * s * s - 2 * s - p * (1 - 2 * s) / 2) / d
    };
    return new double[][] {v, turn, slope};
  }

  /** 12 EI / (κGA L²). */
  private static double shearRatio(Beam beam, int plane) {
    CrossSection c = beam.section();
    Material m = beam.material();
    double area = plane == 0 ? c.asy() : c.asz();
    double inertia = plane == 0 ? c.iz() : c.iy();
    double l = beam.length();
    return area == 0 ? 0 : 12 * m.e() * inertia / (m.g() * area * l * l);
  }
}
