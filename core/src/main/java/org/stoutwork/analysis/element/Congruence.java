package org.stoutwork.analysis.element;

/** The product B' A B of a symmetric matrix, row by row. */
final class Congruence {
  private Congruence() {}

  static double[] of(double[][] a, double[][] b) {
    int inner = a.length;
    int outer = b[0].length;
    double[][] ab = new double[inner][outer];
    for (int i = 0; i < inner; i++) {
      for (int j = 0; j < inner; j++) {
        if (a[i][j] != 0) {
          for (int c = 0; c < outer; c++) {
            ab[i][c] += a[i][j] * b[j][c];
          }
        }
      }
    }
    double[] full = new double[outer * outer];
    for (int r = 0; r < outer; r++) {
      for (int c = r; c < outer; c++) {
        double sum = 0;
        for (int i = 0; i < inner; i++) {
          sum += b[i][r] * ab[i][c];
        }
        full[outer * r + c] = sum;
        full[outer * c + r] = sum;
      }
    }
    return full;
  }
}
