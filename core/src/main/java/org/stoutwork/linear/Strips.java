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
}
