package org.stoutwork.linear;

/**
 * Inner loops over rows of numbers. Each has four (or one) sources and one target, all read at the
 * same index: the form that the virtual machine turns into vector instructions.
 */
final class Strips {
  private Strips() {}

  static void subtract(
      double[] y,
      int from,
      int to,
      double a,
      double[] p,
      double b,
      double[] q,
      double c,
      double[] r,
      double d,
      double[] s) {
    for (int i = from; i < to; i++) {
      y[i] -= a * p[i] + b * q[i] + c * r[i] + d * s[i];
    }
  }

  static void subtract(double[] y, int from, int to, double a, double[] p, double b, double[] q) {
    for (int i = from; i < to; i++) {
      y[i] -= a * p[i] + b * q[i];
    }
  }

  static void subtract(double[] y, int from, int to, double a, double[] p) {
    for (int i = from; i < to; i++) {
      y[i] -= a * p[i];
    }
  }

  static void scale(double[] y, int from, int to, double factor) {
    for (int i = from; i < to; i++) {
      y[i] *= factor;
    }
  }

  /** y -= a b, number by number. */
  static void subtractProduct(double[] y, double[] a, double[] b) {
    for (int i = 0; i < y.length; i++) {
      y[i] -= a[i] * b[i];
    }
  }

  /** y -= a b + c d, number by number. */
  static void subtractProducts(double[] y, double[] a, double[] b, double[] c, double[] d) {
    for (int i = 0; i < y.length; i++) {
      y[i] -= a[i] * b[i] + c[i] * d[i];
    }
  }

  /** y = a b, number by number. */
  static void product(double[] y, double[] a, double[] b) {
    for (int i = 0; i < y.length; i++) {
      y[i] = a[i] * b[i];
    }
  }

  /** y += factor a, number by number. */
  static void add(double[] y, double factor, double[] a) {
    for (int i = 0; i < y.length; i++) {
      y[i] += factor * a[i];
    }
  }
}
