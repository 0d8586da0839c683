package org.stoutwork.linear;

import java.util.Arrays;

/**
 * Factorises {@link #WIDTH} matrices of one pattern at once, each in a lane of its own: every
 * number is an array over the lanes, so all work is done by vector instructions whatever the
 * pattern. One thread at a time; a lane's answer does not depend on what the other lanes hold.
 */
public final class LdlLanes {
  /** Number of lanes. */
  public static final int WIDTH = 64;

  private final LdlPattern pattern;
  private final SparseSymmetric like;

  /** By position and row of its strip, from the diagonal on. */
  private final double[][][] column;

  private final double[][] given;
  private final double[][] inverse;
  private final double[][] factor;
  private final double[][] y;
  private final int[] where;
  private final int[] failed = new int[WIDTH];
  private final double smallestRatio;

  /**
   * Makes the storage.
   *
   * @param like a matrix with entries in the places that all lanes will have
   * @param order as for {@link LdlFactor#of(SparseSymmetric, int[])}
   */
  public LdlLanes(SparseSymmetric like, int[] order) {
    this.like = like;
    this.pattern = LdlPattern.exact(like, order);
    this.column = new double[pattern.size][][];
    int widest = 0;
    for (int k = 0; k < pattern.size; k++) {
      int g = pattern.groupOf[k];
      column[k] = new double[pattern.rows[g].length][];
      for (int i = k - pattern.first[g]; i < column[k].length; i++) {
        column[k][i] = new double[WIDTH];
      }
      widest = Math.max(widest, pattern.first[g + 1] - pattern.first[g]);
    }
    this.given = new double[pattern.size][WIDTH];
    this.inverse = new double[pattern.size][WIDTH];
    this.factor = new double[widest][WIDTH];
    this.y = new double[pattern.size][];
    this.where = new int[pattern.size];
    this.smallestRatio = LdlFactor.smallestPivotRatio(pattern.size);
  }

  /** Sets all matrices to zero. */
  public void clear() {
    for (double[][] strip : column) {
      for (double[] lanes : strip) {
        if (lanes != null) {
          Arrays.fill(lanes, 0);
        }
      }
    }
  }

  /** The number of the entry at (i, j), i at most j, for {@link #add}. */
  public int entry(int i, int j) {
    int low = like.columnStart(j);
    int high = like.columnStart(j + 1);
    for (int p = low; p < high; p++) {
      if (like.row(p) == i) {
        return p;
      }
    }
    throw new IllegalArgumentException("nothing is stored at (" + i + ", " + j + ")");
  }

  /** Adds {@code weight} times one number a lane to an entry. */
  public void add(int entry, double weight, double[] lanes) {
    Strips.add(column[pattern.columnOf(entry)][pattern.rowOf(entry)], weight, lanes);
  }

  /**
   * Factorises. A lane that meets no resistance is carried on with a unit pivot and reported by
   * {@link #failedUnknown}; its numbers mean nothing.
   */
  public void factor() {
    Arrays.fill(failed, -1);
    for (int g = 0; g < pattern.rows.length; g++) {
      int begin = pattern.first[g];
      int end = pattern.first[g + 1];
      for (int k = begin; k < end; k++) {
        System.arraycopy(column[k][k - begin], 0, given[k], 0, WIDTH);
      }
      int[] changes = pattern.changes[g];
      int[] rows = pattern.rows[g];
      for (int i = 0; changes.length > 0 && i < rows.length; i++) {
        where[rows[i]] = i;
      }
      for (int c = 0; c < changes.length; c += 3) {
        change(changes[c], changes[c + 1], changes[c + 2]);
      }
      own(begin, end, rows.length);
    }
  }

  private void change(int s, int from, int to) {
    int[] rows = pattern.rows[s];
    int begin = pattern.first[s];
    int end = pattern.first[s + 1];
    for (int j = from; j < to; j++) {
      weigh(begin, end, j);
      double[][] target = column[rows[j]];
      for (int i = j; i < rows.length; i++) {
        subtract(target[where[rows[i]]], begin, end, i);
      }
    }
  }

  /** Row j of finished columns times their pivots. */
  private void weigh(int begin, int end, int j) {
    for (int k = begin; k < end; k++) {
      // The pivot stands on the diagonal of its strip.
      Strips.product(factor[k - begin], column[k][j], pivot(k));
    }
  }

  private double[] pivot(int k) {
    return column[k][k - pattern.first[pattern.groupOf[k]]];
  }

  private void subtract(double[] target, int begin, int end, int i) {
    int k = begin;
    for (; k + 1 < end; k += 2) {
      Strips.subtractProducts(
          target, column[k][i], factor[k - begin], column[k + 1][i], factor[k + 1 - begin]);
    }
    if (k < end) {
      Strips.subtractProduct(target, column[k][i], factor[k - begin]);
    }
  }

  private void own(int begin, int end, int length) {
    for (int k = begin; k < end; k++) {
      int j = k - begin;
      weigh(begin, k, j);
      for (int i = j; i < length; i++) {
        subtract(column[k][i], begin, k, i);
      }
      judge(k, column[k][j]);
      for (int i = j + 1; i < length; i++) {
        Strips.product(column[k][i], column[k][i], inverse[k]);
      }
    }
  }

  private void judge(int k, double[] pivot) {
    double[] diagonal = given[k];
    double[] result = inverse[k];
    for (int lane = 0; lane < WIDTH; lane++) {
      boolean holds = pivot[lane] > smallestRatio * diagonal[lane] && diagonal[lane] > 0;
      if (!holds) {
        failed[lane] = failed[lane] < 0 ? pattern.order[k] : failed[lane];
        pivot[lane] = 1;
      }
      result[lane] = 1 / pivot[lane];
    }
  }

  /** The unknown at which a lane's matrix met no resistance, or -1 when all is well. */
  public int failedUnknown(int lane) {
    return failed[lane];
  }

  /**
   * Solves in place.
   *
   * @param x by unknown and lane: right-hand sides before, solutions after
   */
  public void solve(double[][] x) {
    for (int k = 0; k < pattern.size; k++) {
      y[k] = x[pattern.order[k]];
    }
    for (int g = 0; g < pattern.rows.length; g++) {
      int begin = pattern.first[g];
      int end = pattern.first[g + 1];
      for (int i = 1; i < end - begin; i++) {
        pairs(y[begin + i], begin, begin + i, i);
      }
      int[] rows = pattern.rows[g];
      for (int i = end - begin; i < rows.length; i++) {
        pairs(y[rows[i]], begin, end, i);
      }
    }
    for (int k = 0; k < pattern.size; k++) {
      Strips.product(y[k], y[k], inverse[k]);
    }
    for (int g = pattern.rows.length - 1; g >= 0; g--) {
      for (int k = pattern.first[g + 1] - 1; k >= pattern.first[g]; k--) {
        backward(k, k - pattern.first[g] + 1, pattern.rows[g]);
      }
    }
  }

  /** Takes row i of columns begin..end times their solutions from {@code target}. */
  private void pairs(double[] target, int begin, int end, int i) {
    int k = begin;
    for (; k + 1 < end; k += 2) {
      Strips.subtractProducts(target, column[k][i], y[k], column[k + 1][i], y[k + 1]);
    }
    if (k < end) {
      Strips.subtractProduct(target, column[k][i], y[k]);
    }
  }

  private void backward(int k, int from, int[] rows) {
    double[][] l = column[k];
    int i = from;
    for (; i + 1 < rows.length; i += 2) {
      Strips.subtractProducts(y[k], l[i], y[rows[i]], l[i + 1], y[rows[i + 1]]);
    }
    if (i < rows.length) {
      Strips.subtractProduct(y[k], l[i], y[rows[i]]);
    }
  }

  /** Numbers kept a lane, for judging whether a batch fits the cache. */
  public long numbersPerLane() {
    return pattern.entries() + 5L * pattern.size;
  }
}
