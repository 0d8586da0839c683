package org.stoutwork.analysis.element;

/**
 * Inner loops over rows of numbers, one number a loading, in the form that the virtual machine
 * turns into vector instructions. Sums run from left to right, as they would for a single loading.
 */
final class Rows {
  private Rows() {}

  /** y = a p + b q. */
  static void set(double[] y, int n, double a, double[] p, double b, double[] q) {
    for (int i = 0; i < n; i++) {
      y[i] = a * p[i] + b * q[i];
    }
  }

  /** y = y + a p + b q. */
  static void add(double[] y, int n, double a, double[] p, double b, double[] q) {
    for (int i = 0; i < n; i++) {
      y[i] = y[i] + a * p[i] + b * q[i];
    }
  }

  /** y = y + a p. */
  static void add(double[] y, int n, double a, double[] p) {
    for (int i = 0; i < n; i++) {
      y[i] = y[i] + a * p[i];
    }
  }

  /** y = the sum of an even number of rows of {@code p}, each with its factor. */
  static void sum(double[] y, int n, double[] factor, double[][] p) {
    set(y, n, factor[0], p[0], factor[1], p[1]);
    for (int k = 2; k < factor.length; k += 2) {
      add(y, n, factor[k], p[k], factor[k + 1], p[k + 1]);
    }
  }
}
