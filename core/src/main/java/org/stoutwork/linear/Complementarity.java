package org.stoutwork.linear;

import java.util.Arrays;

/**
 * Finds z with z >= 0, r = M z + q >= 0 and z r = 0 for a symmetric positive semi-definite M: the
 * question of which one-way contacts press and which stand open.
 *
 * <p>Lemke's pivoting with a lexicographic ratio test, which ends for every such M, either with the
 * solution or with a ray that proves there is none (R. W. Cottle, J.-S. Pang, R. E. Stone, <em>The
 * Linear Complementarity Problem</em>, chapter 4). Rows are scaled to a unit diagonal first.
 */
public final class Complementarity {
  private static final double ZERO = 1e-10;

  private final int n;
  private final double[][] table;
  private final int[] basis;
  private final double[] scale;

  /** The answer: exactly one of the three kinds. */
  public sealed interface Answer permits Settled, Ray, Unfinished {}

  /**
   * A solution.
   *
   * @param open true where z > 0 (so r = 0)
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  public record Settled(boolean[] open) implements Answer {}

  /**
   * No solution exists.
   *
   * @param direction z >= 0 with M z = 0 along which q decreases without bound
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  public record Ray(double[] direction) implements Answer {}

  /**
   * The search was given up. It ends in exact numbers; rounding may keep it going.
   *
   * @param exchanges tried
   */
  public record Unfinished(int exchanges) implements Answer {}

  private Complementarity(double[][] m, double[] q) {
    n = q.length;
    scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = m[i][i] > 0 ? 1 / Math.sqrt(m[i][i]) : 1;
    }
    double size = 0;
    for (int i = 0; i < n; i++) {
      size = Math.max(size, Math.abs(q[i] * scale[i]));
    }
    // Columns: w (0..n-1), z (n..2n-1), artificial (2n), right-hand side (2n+1).
    table = new double[n][2 * n + 2];
    basis = new int[n];
    for (int i = 0; i < n; i++) {
      basis[i] = i;
      table[i][i] = 1;
      for (int j = 0; j < n; j++) {
        table[i][n + j] = -m[i][j] * scale[i] * scale[j];
      }
      table[i][2 * n] = -1;
      table[i][2 * n + 1] = size == 0 ? 0 : q[i] * scale[i] / size;
    }
  }

  /** Solves the problem. */
  public static Answer solve(double[][] m, double[] q) {
    return solve(m, q, 50 * (q.length + 10));
  }

  /** The same, given up after {@code limit} exchanges. */
  static Answer solve(double[][] m, double[] q, int limit) {
    return new Complementarity(m, q).run(limit);
  }

  private Answer run(int limit) {
    int worst = 0;
    for (int i = 1; i < n; i++) {
      if (table[i][2 * n + 1] < table[worst][2 * n + 1]) {
        worst = i;
      }
    }
    if (n == 0 || table[worst][2 * n + 1] >= 0) {
      return new Settled(new boolean[n]);
    }
    int entering = 2 * n;
    int row = worst;
    for (int step = 0; step < limit; step++) {
      int leaving = basis[row];
      pivot(row, entering);
      if (leaving == 2 * n) {
        return settled();
      }
      entering = leaving < n ? leaving + n : leaving - n;
      row = ratioTest(entering);
      if (row < 0) {
        return ray(entering);
      }
    }
    return new Unfinished(limit);
  }

  private void pivot(int row, int column) {
    double p = table[row][column];
    for (int j = 0; j < table[row].length; j++) {
      table[row][j] /= p;
    }
    for (int i = 0; i < n; i++) {
      double factor = table[i][column];
      if (i != row && factor != 0) {
        for (int j = 0; j < table[row].length; j++) {
          table[i][j] -= factor * table[row][j];
        }
      }
    }
    basis[row] = column;
  }

  /**
   * The row that first reaches zero; ties are broken lexicographically, the artificial one first.
   */
  private int ratioTest(int entering) {
    int best = -1;
    for (int i = 0; i < n; i++) {
      if (table[i][entering] > ZERO && (best < 0 || before(i, best, entering))) {
        best = i;
      }
    }
    return best;
  }

  private boolean before(int i, int best, int entering) {
    double a = table[i][2 * n + 1] / table[i][entering];
    double b = table[best][2 * n + 1] / table[best][entering];
    if (Math.abs(a - b) > 1e-13 * Math.max(1, Math.abs(a))) {
      return a < b;
    }
    if (basis[i] == 2 * n || basis[best] == 2 * n) {
      return basis[i] == 2 * n;
    }
    for (int j = 0; j < n; j++) {
      double x = table[i][j] / table[i][entering];
      double y = table[best][j] / table[best][entering];
      if (Math.abs(x - y) > 1e-13 * Math.max(1, Math.abs(x))) {
        return x < y;
      }
    }
    return false;
  }

  private Answer settled() {
    boolean[] open = new boolean[n];
    for (int i = 0; i < n; i++) {
      if (basis[i] >= n && basis[i] < 2 * n && table[i][2 * n + 1] > 0) {
        open[basis[i] - n] = true;
      }
    }
    return new Settled(open);
  }

  private Answer ray(int entering) {
    double[] direction = new double[n];
    if (entering >= n) {
      direction[entering - n] = scale[entering - n];
    }
    for (int i = 0; i < n; i++) {
      if (basis[i] >= n && basis[i] < 2 * n) {
        direction[basis[i] - n] = Math.max(0, -table[i][entering]) * scale[basis[i] - n];
      }
    }
    if (Arrays.stream(direction).max().orElse(0) == 0) {
      Arrays.fill(direction, 1);
    }
    return new Ray(direction);
  }
}
