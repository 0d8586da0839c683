package org.stoutwork.reference.frames;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Vec3;

/**
 * The textbook stiffness of the Timoshenko beam (J. S. Przemieniecki, <em>Theory of Matrix
 * Structural Analysis</em>, 1968, section 5.6, from memory) in its local axes, start then end.
 */
final class DenseBeam {
  private DenseBeam() {}

  /** Rows: local directions of both ends; columns: global ones. The roll turns y and z, rad. */
  static RealMatrix rotation(Vec3 axis, double roll) {
    double l = axis.length();
    double[] x = {axis.x() / l, axis.y() / l, axis.z() / l};
    double[] y = {-x[1], x[0], 0};
    double flat = Math.hypot(x[0], x[1]);
    y = flat < 1e-6 ? new double[] {0, 1, 0} : new double[] {y[0] / flat, y[1] / flat, 0};
    double[] z = {x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]};
    double c = Math.cos(roll);
    double s = Math.sin(roll);
    for (int i = 0; i < 3; i++) {
      double turned = c * y[i] + s * z[i];
      z[i] = -s * y[i] + c * z[i];
      y[i] = turned;
    }
    RealMatrix t = new Array2DRowRealMatrix(12, 12);
    for (int block = 0; block < 4; block++) {
      for (int j = 0; j < 3; j++) {
        t.setEntry(3 * block, 3 * block + j, x[j]);
        t.setEntry(3 * block + 1, 3 * block + j, y[j]);
        t.setEntry(3 * block + 2, 3 * block + j, z[j]);
      }
    }
    return t;
  }

  static RealMatrix local(double l, CrossSection s, Material m) {
    RealMatrix k = new Array2DRowRealMatrix(12, 12);
    bar(k, 0, m.e() * s.area() / l);
    bar(k, 3, m.g() * s.j() / l);
    bend(k, new int[] {1, 5, 7, 11}, 1, m.e() * s.iz(), m.g() * s.asy(), l);
    bend(k, new int[] {2, 4, 8, 10}, -1, m.e() * s.iy(), m.g() * s.asz(), l);
    return k;
  }

  private static void bar(RealMatrix k, int i, double stiffness) {
    k.addToEntry(i, i, stiffness);
    k.addToEntry(i + 6, i + 6, stiffness);
    k.addToEntry(i, i + 6, -stiffness);
    k.addToEntry(i + 6, i, -stiffness);
  }

  private static void bend(RealMatrix k, int[] p, int sign, double ei, double ga, double l) {
    double phi = ga == 0 ? 0 : 12 * ei / (ga * l * l);
    double c = ei / (l * l * l * (1 + phi));
    double[][] b = {
      {12, sign * 6 * l, -12, sign * 6 * l},
      {sign * 6 * l, (4 + phi) * l * l, -sign * 6 * l, (2 - phi) * l * l},
      {-12, -sign * 6 * l, 12, -sign * 6 * l},
      {sign * 6 * l, (2 - phi) * l * l, -sign * 6 * l, (4 + phi) * l * l}
    };
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        k.addToEntry(p[i], p[j], c * b[i][j]);
      }
    }
  }
}
