package org.stoutwork.linear;

import java.util.Arrays;

/**
 * Solves for up to {@link #WIDTH} right-hand sides side by side. Each number goes through the same
 * operations in the same order as in a single solution, so the answers are the same to the bit.
 */
final class LdlTile {
  static final int WIDTH = 64;

  private final LdlNumeric numeric;
  private final LdlPattern pattern;
  private final double[][] x;
  private final boolean[] active;

  LdlTile(LdlNumeric numeric) {
    this.numeric = numeric;
    this.pattern = numeric.pattern;
    this.x = new double[pattern.size][WIDTH];
    this.active = new boolean[pattern.rows.length];
  }

  /** Solves right-hand sides {@code from} to {@code to} into the same places of {@code answers}. */
  void solve(double[][] sides, double[][] answers, int from, int to) {
    int width = to - from;
    Arrays.fill(active, false);
    for (int k = 0; k < pattern.size; k++) {
      int unknown = pattern.order[k];
      double[] row = x[k];
      boolean some = false;
      for (int c = 0; c < width; c++) {
        row[c] = sides[from + c][unknown];
        some |= row[c] != 0;
      }
      active[pattern.groupOf[k]] |= some;
    }
    for (int g = 0; g < pattern.rows.length; g++) {
      // Until a branch of the tree meets its first load there is nothing to do.
      if (active[g]) {
        forward(g, width);
        if (pattern.parentGroup[g] >= 0) {
          active[pattern.parentGroup[g]] = true;
        }
      }
    }
    for (int k = 0; k < pattern.size; k++) {
      divide(x[k], width, numeric.pivot[k]);
    }
    for (int g = pattern.rows.length - 1; g >= 0; g--) {
      backward(g, width);
    }
    for (int k = 0; k < pattern.size; k++) {
      int unknown = pattern.order[k];
      for (int c = 0; c < width; c++) {
        answers[from + c][unknown] = x[k][c];
      }
    }
  }

  private static void divide(double[] row, int width, double pivot) {
    for (int c = 0; c < width; c++) {
      row[c] /= pivot;
    }
  }

  private void forward(int g, int n) {
    int begin = pattern.first[g];
    int end = pattern.first[g + 1];
    int[] rows = pattern.rows[g];
    int width = end - begin;
    double[][] l = numeric.column;
    for (int k = begin; k < end; k++) {
      for (int i = k - begin + 1; i < width; i++) {
        Strips.subtract(x[begin + i], 0, n, l[k][i], x[k]);
      }
    }
    for (int i = width; i < rows.length; i++) {
      double[] y = x[rows[i]];
      int k = begin;
      for (; k + 3 < end; k += 4) {
        Strips.subtract(
            y,
            0,
            n,
            l[k][i],
            x[k],
            l[k + 1][i],
            x[k + 1],
            l[k + 2][i],
            x[k + 2],
            l[k + 3][i],
            x[k + 3]);
      }
      for (; k < end; k++) {
        Strips.subtract(y, 0, n, l[k][i], x[k]);
      }
    }
  }

  private void backward(int g, int n) {
    int begin = pattern.first[g];
    int[] rows = pattern.rows[g];
    for (int k = pattern.first[g + 1] - 1; k >= begin; k--) {
      double[] l = numeric.column[k];
      double[] y = x[k];
      int j = k - begin + 1;
      for (; j + 3 < rows.length; j += 4) {
        Strips.subtract(
            y,
            0,
            n,
            l[j],
            x[rows[j]],
            l[j + 1],
            x[rows[j + 1]],
            l[j + 2],
            x[rows[j + 2]],
            l[j + 3],
            x[rows[j + 3]]);
      }
      for (; j < rows.length; j++) {
        Strips.subtract(y, 0, n, l[j], x[rows[j]]);
      }
    }
  }
}
