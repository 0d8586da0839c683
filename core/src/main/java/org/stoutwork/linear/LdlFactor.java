package org.stoutwork.linear;

/**
 * The factorisation P A P' = L D L' of a sparse symmetric positive definite matrix, row by row
 * along the elimination tree.
 *
 * <p>Immutable after it has been made, so any number of threads may solve with it. Method: T. A.
 * Davis, <em>Direct Methods for Sparse Linear Systems</em> (SIAM, 2006), chapter 4 (elimination
 * tree, up-looking factorisation); the code is our own.
 */
public final class LdlFactor implements Factorisation {
  /** A pivot smaller than this part of its diagonal entry counts as no resistance at all. */
  public static final double SMALLEST_PIVOT_RATIO = 1e-13;

  private final int size;
  private final int[] order;
  private final int[] columnStart;
  private final int[] row;
  private final double[] value;
  private final double[] pivot;

  private LdlFactor(int[] order, int[] columnStart, int[] row, double[] value, double[] pivot) {
    this.size = order.length;
    this.order = order;
    this.columnStart = columnStart;
    this.row = row;
    this.value = value;
    this.pivot = pivot;
  }

  /**
   * Factorises {@code matrix}, eliminating unknowns in the given order (position to unknown), as
   * {@link MinimumDegree} makes it.
   */
  public static Factorisation of(SparseSymmetric matrix, int[] order) {
    return new Work(matrix, order).run();
  }

  /** Number of unknowns. */
  public int size() {
    return size;
  }

  /** The order of elimination, position to unknown. */
  public int[] order() {
    return order.clone();
  }

  /** Stored entries of L below its unit diagonal. */
  public int entries() {
    return columnStart[size];
  }

  /** The pivots, by unknown. */
  public double[] pivots() {
    double[] byUnknown = new double[size];
    for (int k = 0; k < size; k++) {
      byUnknown[order[k]] = pivot[k];
    }
    return byUnknown;
  }

  /** Solves A x = b; {@code b} is left as it is. */
  public double[] solve(double[] b) {
    double[] y = new double[size];
    for (int k = 0; k < size; k++) {
      y[k] = b[order[k]];
    }
    for (int j = 0; j < size; j++) {
      double yj = y[j];
      if (yj != 0) {
        for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
          y[row[p]] -= value[p] * yj;
        }
      }
    }
    for (int j = size - 1; j >= 0; j--) {
      double sum = y[j] / pivot[j];
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        sum -= value[p] * y[row[p]];
      }
      y[j] = sum;
    }
    double[] x = new double[size];
    for (int k = 0; k < size; k++) {
      x[order[k]] = y[k];
    }
    return x;
  }

  /** The state of one factorisation while it runs. */
  private static final class Work {
    private final int n;
    private final SparseSymmetric a;
    private final int[] order;
    private final int[] place;
    private final int[] parent;
    private final int[] columnStart;
    private final int[] filled;
    private final int[] mark;
    private final int[] stack;
    private int[] row = new int[0];
    private double[] value = new double[0];
    private final double[] pivot;
    private final double[] y;

    // Upper triangle of P A P' by columns.
    private final int[] upperStart;
    private final int[] upperRow;
    private final double[] upperValue;

    Work(SparseSymmetric a, int[] order) {
      this.n = a.size();
      this.a = a;
      this.order = order.clone();
      this.place = new int[n];
      for (int k = 0; k < n; k++) {
        place[order[k]] = k;
      }
      this.parent = new int[n];
      this.columnStart = new int[n + 1];
      this.filled = new int[n];
      this.mark = new int[n];
      this.stack = new int[n];
      this.pivot = new double[n];
      this.y = new double[n];
      this.upperStart = new int[n + 1];
      this.upperRow = new int[a.entries()];
      this.upperValue = new double[a.entries()];
    }

    Factorisation run() {
      permute();
      treeAndCounts();
      for (int k = 0; k < n; k++) {
        double diagonal = eliminateRow(k);
        if (!(pivot[k] > SMALLEST_PIVOT_RATIO * Math.abs(diagonal)) || !(diagonal > 0)) {
          double ratio = diagonal == 0 ? 0 : pivot[k] / Math.abs(diagonal);
          return new Singular(order[k], ratio, freeDirection(k));
        }
      }
      return new LdlFactor(order, columnStart, row, value, pivot);
    }

    private void permute() {
      for (int j = 0; j < n; j++) {
        for (int p = a.columnStart(j); p < a.columnStart(j + 1); p++) {
          upperStart[Math.max(place[a.row(p)], place[j]) + 1]++;
        }
      }
      for (int k = 0; k < n; k++) {
        upperStart[k + 1] += upperStart[k];
      }
      int[] next = upperStart.clone();
      for (int j = 0; j < n; j++) {
        for (int p = a.columnStart(j); p < a.columnStart(j + 1); p++) {
          int pi = place[a.row(p)];
          int pj = place[j];
          int slot = next[Math.max(pi, pj)]++;
          upperRow[slot] = Math.min(pi, pj);
          upperValue[slot] = a.value(p);
        }
      }
    }

    private void treeAndCounts() {
      int[] count = new int[n];
      for (int k = 0; k < n; k++) {
        parent[k] = -1;
        mark[k] = k;
        for (int p = upperStart[k]; p < upperStart[k + 1]; p++) {
          for (int i = upperRow[p]; mark[i] != k; i = parent[i]) {
            if (parent[i] < 0) {
              parent[i] = k;
            }
            count[i]++;
            mark[i] = k;
          }
        }
      }
      for (int k = 0; k < n; k++) {
        columnStart[k + 1] = columnStart[k] + count[k];
        mark[k] = -1;
      }
      row = new int[columnStart[n]];
      value = new double[columnStart[n]];
    }

    /** Computes row k of L and its pivot; returns the diagonal entry of the matrix. */
    private double eliminateRow(int k) {
      int top = n;
      mark[k] = k;
      double diagonal = 0;
      for (int p = upperStart[k]; p < upperStart[k + 1]; p++) {
        int i = upperRow[p];
        if (i == k) {
          diagonal += upperValue[p];
          continue;
        }
        y[i] += upperValue[p];
        int length = 0;
        for (; mark[i] != k; i = parent[i]) {
          stack[length++] = i;
          mark[i] = k;
        }
        while (length > 0) {
          stack[--top] = stack[--length];
        }
      }
      double d = diagonal;
      for (; top < n; top++) {
        int j = stack[top];
        double yj = y[j];
        y[j] = 0;
        int end = columnStart[j] + filled[j];
        for (int p = columnStart[j]; p < end; p++) {
          y[row[p]] -= value[p] * yj;
        }
        double l = yj / pivot[j];
        d -= l * yj;
        row[end] = k;
        value[end] = l;
        filled[j]++;
      }
      pivot[k] = d;
      return diagonal;
    }

    /** Solves the leading block for the vector that meets no resistance at unknown k. */
    private double[] freeDirection(int k) {
      double[] x = new double[n];
      x[k] = 1;
      for (int j = k - 1; j >= 0; j--) {
        double sum = 0;
        for (int p = columnStart[j]; p < columnStart[j] + filled[j]; p++) {
          sum -= value[p] * x[row[p]];
        }
        x[j] = sum;
      }
      double[] byUnknown = new double[n];
      for (int p = 0; p < n; p++) {
        byUnknown[order[p]] = x[p];
      }
      return byUnknown;
    }
  }
}
