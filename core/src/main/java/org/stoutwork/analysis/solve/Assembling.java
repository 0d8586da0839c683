package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.linear.SparseSymmetric;

/** Gathers the matrices and the forces of elements. */
final class Assembling {
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

  private static boolean isZero(double[] u) {
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
}
