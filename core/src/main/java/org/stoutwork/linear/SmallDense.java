package org.stoutwork.linear;

/** Inverse of a small full matrix, by elimination with pivoting on a scaled copy. */
public final class SmallDense {
  private SmallDense() {}

  /**
   * Inverse of a symmetric, possibly indefinite matrix.
   *
   * @throws ArithmeticException when the matrix is singular to working precision
   */
  public static double[][] inverseOfSymmetric(double[][] matrix) {
    int n = matrix.length;
    double[] scale = scales(matrix);
    double[][] a = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        a[i][j] = scale[i] * matrix[i][j] * scale[j];
      }
      a[i][n + i] = 1;
    }
    for (int column = 0; column < n; column++) {
      pivot(a, column);
      eliminate(a, column);
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        // The mean of both halves keeps the inverse exactly symmetric.
        inverse[i][j] = scale[i] * scale[j] * (a[i][n + j] + a[j][n + i]) / 2;
      }
    }
    return inverse;
  }

  /** Solves a x = b for a full square matrix; throws as {@link #inverseOfSymmetric}. */
  public static double[] solveSymmetric(double[][] matrix, double[] b) {
    double[][] inverse = inverseOfSymmetric(matrix);
    double[] x = new double[b.length];
    for (int i = 0; i < b.length; i++) {
      for (int j = 0; j < b.length; j++) {
        x[i] += inverse[i][j] * b[j];
      }
    }
    return x;
  }

  private static double[] scales(double[][] matrix) {
    int n = matrix.length;
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      if (matrix[i][i] > 0) {
        scale[i] = 1 / Math.sqrt(matrix[i][i]);
      }
    }
    for (int i = 0; i < n; i++) {
      if (scale[i] == 0) {
        double largest = Math.sqrt(Math.abs(matrix[i][i]));
        for (int j = 0; j < n; j++) {
          largest = Math.max(largest, Math.abs(matrix[i][j]) * scale[j]);
        }
        scale[i] = largest == 0 ? 1 : 1 / largest;
      }
    }
    return scale;
  }

  private static void pivot(double[][] a, int column) {
    int best = column;
    for (int i = column + 1; i < a.length; i++) {
      if (Math.abs(a[i][column]) > Math.abs(a[best][column])) {
        best = i;
      }
    }
    if (!(Math.abs(a[best][column]) > 1e-15)) {
      throw new ArithmeticException("singular at column " + column);
    }
    double[] held = a[best];
    a[best] = a[column];
    a[column] = held;
  }

  private static void eliminate(double[][] a, int column) {
    double[] pivotRow = a[column];
    double pivot = pivotRow[column];
    for (int j = column; j < pivotRow.length; j++) {
      pivotRow[j] /= pivot;
    }
    for (int i = 0; i < a.length; i++) {
      double factor = a[i][column];
      if (i != column && factor != 0) {
        for (int j = column; j < pivotRow.length; j++) {
          a[i][j] -= factor * pivotRow[j];
        }
      }
    }
  }
}
