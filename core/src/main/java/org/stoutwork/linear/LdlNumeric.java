package org.stoutwork.linear;

import java.util.Arrays;

/** The numbers of a factorisation and the work of finding them. One thread at a time. */
final class LdlNumeric {
  /** No pivot failed. */
  private static final int NONE = -1;

  final LdlPattern pattern;

  /** By position: the strip of its column; row i of the strip is row {@code rows[group][i]}. */
  final double[][] column;

  final double[] pivot;
  private final double[] inverse;
  private final int[] where;
  private final double[] change;
  private final double smallestRatio;
  private double diagonal;

  LdlNumeric(LdlPattern pattern) {
    this.pattern = pattern;
    this.column = new double[pattern.size][];
    for (int k = 0; k < pattern.size; k++) {
      column[k] = new double[pattern.rows[pattern.groupOf[k]].length];
    }
    this.pivot = new double[pattern.size];
    this.inverse = new double[pattern.size];
    this.where = new int[pattern.size];
    this.change = new double[pattern.longest];
    this.smallestRatio = LdlFactor.smallestPivotRatio(pattern.size);
  }

  /** Factorises; returns the position whose pivot failed, or -1. */
  int run(SparseSymmetric matrix) {
    for (double[] strip : column) {
      Arrays.fill(strip, 0);
    }
    for (int p = 0; p < matrix.entries(); p++) {
      column[pattern.columnOf(p)][pattern.rowOf(p)] = matrix.value(p);
    }
    for (int g = 0; g < pattern.rows.length; g++) {
      // The diagonal as given, kept while changes are subtracted.
      for (int k = pattern.first[g]; k < pattern.first[g + 1]; k++) {
        inverse[k] = column[k][k - pattern.first[g]];
      }
      int[] changes = pattern.changes[g];
      if (changes.length > 0) {
        int[] rows = pattern.rows[g];
        for (int i = 0; i < rows.length; i++) {
          where[rows[i]] = i;
        }
        for (int c = 0; c < changes.length; c += 3) {
          change(changes[c], changes[c + 1], changes[c + 2]);
        }
      }
      int bad = own(pattern.first[g], pattern.first[g + 1], pattern.rows[g].length);
      if (bad != NONE) {
        return bad;
      }
    }
    return NONE;
  }

  /** The diagonal entry of the matrix at the failed pivot. */
  double failedDiagonal() {
    return diagonal;
  }

  /** What the finished group {@code s} takes from the columns at its rows from..to. */
  private void change(int s, int from, int to) {
    int[] rows = pattern.rows[s];
    int length = rows.length;
    int begin = pattern.first[s];
    int end = pattern.first[s + 1];
    for (int j = from; j < to; j++) {
      Arrays.fill(change, j, length, 0);
      gatherInto(change, begin, end, j, length);
      double[] target = column[rows[j]];
      for (int i = j; i < length; i++) {
        target[where[rows[i]]] += change[i];
      }
    }
  }

  /** Subtracts the products of columns begin..end with their row {@code j}. */
  private void gatherInto(double[] y, int begin, int end, int j, int length) {
    int k = begin;
    for (; k + 3 < end; k += 4) {
      Strips.subtract(
          y,
          j,
          length,
          column[k][j] * pivot[k],
          column[k],
          column[k + 1][j] * pivot[k + 1],
          column[k + 1],
          column[k + 2][j] * pivot[k + 2],
          column[k + 2],
          column[k + 3][j] * pivot[k + 3],
          column[k + 3]);
    }
    if (k + 1 < end) {
      Strips.subtract(
          y,
          j,
          length,
          column[k][j] * pivot[k],
          column[k],
          column[k + 1][j] * pivot[k + 1],
          column[k + 1]);
      k += 2;
    }
    if (k < end) {
      Strips.subtract(y, j, length, column[k][j] * pivot[k], column[k]);
    }
  }

  /** Factorises a group whose changes by earlier groups are done. */
  private int own(int begin, int end, int length) {
    for (int k = begin; k < end; k++) {
      int j = k - begin;
      double[] y = column[k];
      gatherInto(y, begin, k, j, length);
      double d = y[j];
      double given = inverse[k];
      pivot[k] = d;
      if (!(d > smallestRatio * Math.abs(given)) || !(given > 0)) {
        diagonal = given;
        return k;
      }
      inverse[k] = 1 / d;
      y[j] = 1;
      Strips.scale(y, j + 1, length, inverse[k]);
    }
    return NONE;
  }

  /** The vector, by unknown, that meets no resistance at the failed position {@code k}. */
  double[] freeDirection(int k) {
    double[] x = new double[pattern.size];
    x[k] = 1;
    for (int j = k - 1; j >= 0; j--) {
      int g = pattern.groupOf[j];
      int[] rows = pattern.rows[g];
      double sum = 0;
      for (int i = j - pattern.first[g] + 1; i < rows.length; i++) {
        if (rows[i] <= k) {
          sum -= column[j][i] * x[rows[i]];
        }
      }
      x[j] = sum;
    }
    double[] byUnknown = new double[pattern.size];
    for (int p = 0; p < pattern.size; p++) {
      byUnknown[pattern.order[p]] = x[p];
    }
    return byUnknown;
  }

  /** Solves in place, {@code y} by position. */
  void solve(double[] y, double[] gathered) {
    for (int g = 0; g < pattern.rows.length; g++) {
      forward(g, y);
    }
    for (int k = 0; k < pattern.size; k++) {
      y[k] /= pivot[k];
    }
    for (int g = pattern.rows.length - 1; g >= 0; g--) {
      backward(g, y, gathered);
    }
  }

  private void forward(int g, double[] y) {
    int begin = pattern.first[g];
    int end = pattern.first[g + 1];
    int width = end - begin;
    boolean nothing = true;
    for (int k = begin; k < end; k++) {
      nothing &= y[k] == 0;
    }
    if (nothing) {
      return;
    }
    for (int k = begin; k < end; k++) {
      double[] l = column[k];
      double v = y[k];
      for (int i = k - begin + 1; i < width; i++) {
        y[begin + i] -= v * l[i];
      }
    }
    int[] rows = pattern.rows[g];
    int k = begin;
    for (; k + 3 < end; k += 4) {
      scatter(y, rows, width, k);
    }
    for (; k < end; k++) {
      double[] p = column[k];
      double a = y[k];
      for (int i = width; i < rows.length; i++) {
        y[rows[i]] -= a * p[i];
      }
    }
  }

  private void scatter(double[] y, int[] rows, int width, int k) {
    double[] p = column[k];
    double[] q = column[k + 1];
    double[] r = column[k + 2];
    double[] s = column[k + 3];
    double a = y[k];
    double b = y[k + 1];
    double c = y[k + 2];
    double d = y[k + 3];
    for (int i = width; i < rows.length; i++) {
      y[rows[i]] -= a * p[i] + b * q[i] + c * r[i] + d * s[i];
    }
  }

  private void backward(int g, double[] y, double[] x) {
    int begin = pattern.first[g];
    int[] rows = pattern.rows[g];
    int length = rows.length;
    for (int i = 0; i < length; i++) {
      x[i] = y[rows[i]];
    }
    for (int k = pattern.first[g + 1] - 1; k >= begin; k--) {
      int i = k - begin;
      double[] l = column[k];
      double sum = x[i];
      int j = i + 1;
      for (; j + 3 < length; j += 4) {
        sum -= l[j] * x[j] + l[j + 1] * x[j + 1] + l[j + 2] * x[j + 2] + l[j + 3] * x[j + 3];
      }
      for (; j < length; j++) {
        sum -= l[j] * x[j];
      }
      x[i] = sum;
      y[k] = sum;
    }
  }
}
