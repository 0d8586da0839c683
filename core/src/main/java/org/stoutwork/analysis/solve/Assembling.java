package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.linear.SparseSymmetric;

/** Gathers the matrices and the forces of elements. */
final class Assembling {
  /** Loadings that go through the elements side by side: their rows stay in the nearest cache. */
  private static final int TILE = 64;

  private Assembling() {}

  /** The matrix of the reduced unknowns. */
  static SparseSymmetric matrix(List<? extends Element> elements, Elimination elimination) {
    SparseSymmetric.Builder builder = SparseSymmetric.builder(elimination.reducedSize());
    for (Element element : elements) {
      scatter(builder, element.unknowns(), element.stiffness(), elimination);
    }
    return builder.build();
  }

  /** Adds a symmetric element matrix over {@code unknowns} to the reduced matrix. */
  static void scatter(
      SparseSymmetric.Builder builder, int[] unknowns, double[] k, Elimination elimination) {
    int n = unknowns.length;
    for (int a = 0; a < n; a++) {
      int[] rows = elimination.targets(unknowns[a]);
      double[] rowFactors = elimination.factors(unknowns[a]);
      for (int b = 0; b < n; b++) {
        // Nothing between two unknowns (bending and stretching of a plate) must not count as fill.
        if (a != b && k[a * n + b] == 0) {
          continue;
        }
        int[] columns = elimination.targets(unknowns[b]);
        double[] columnFactors = elimination.factors(unknowns[b]);
        for (int p = 0; p < rows.length; p++) {
          for (int q = 0; q < columns.length; q++) {
            // The element gives both halves; the builder wants each pair once.
            if (rows[p] <= columns[q]) {
              builder.add(rows[p], columns[q], rowFactors[p] * k[a * n + b] * columnFactors[q]);
            }
          }
        }
      }
    }
  }

  /** {@code f} minus the forces that elements call for at displacements {@code u}. */
  static double[] less(double[] f, List<? extends Element> elements, double[] u) {
    if (isZero(u)) {
      return f.clone();
    }
    double[] internal = forces(elements, u);
    for (int i = 0; i < internal.length; i++) {
      internal[i] = f[i] - internal[i];
    }
    return internal;
  }

  /** True when nothing moves at all. */
  static boolean isZero(double[] u) {
    for (double v : u) {
      if (v != 0) {
        return false;
      }
    }
    return true;
  }

  /** Forces that elements call for at displacements {@code u} of all unknowns. */
  static double[] forces(List<? extends Element> elements, double[] u) {
    double[] f = new double[u.length];
    for (Element element : elements) {
      int[] unknowns = element.unknowns();
      double[] own = new double[unknowns.length];
      boolean moves = false;
      for (int i = 0; i < own.length; i++) {
        own[i] = u[unknowns[i]];
        moves |= own[i] != 0;
      }
      if (!moves) {
        continue;
      }
      double[] forces = element.forces(own);
      for (int i = 0; i < own.length; i++) {
        f[unknowns[i]] += forces[i];
      }
    }
    return f;
  }

  /**
   * What {@link #less} gives for each of several loadings, to the bit.
   *
   * @param f forces by loading
   * @param u displacements by loading
   */
  static double[][] lessAll(double[][] f, List<? extends Element> elements, double[][] u) {
    double[][] lacking = new double[f.length][];
    for (int from = 0; from < f.length; from += TILE) {
      tile(f, elements, u, lacking, from, Math.min(f.length, from + TILE));
    }
    return lacking;
  }

  private static void tile(
      double[][] f,
      List<? extends Element> elements,
      double[][] u,
      double[][] lacking,
      int from,
      int to) {
    int unknowns = f[from].length;
    int n = to - from;
    double[][] motion = new double[unknowns][n];
    double[][] internal = new double[unknowns][n];
    for (int c = 0; c < n; c++) {
      double[] own = u[from + c];
      for (int i = 0; i < unknowns; i++) {
        motion[i][c] = own[i];
      }
    }
    for (Element element : elements) {
      element.addForces(motion, internal, n);
    }
    for (int c = 0; c < n; c++) {
      double[] rest = f[from + c].clone();
      for (int i = 0; i < unknowns; i++) {
        rest[i] -= internal[i][c];
      }
      lacking[from + c] = rest;
    }
  }
}
