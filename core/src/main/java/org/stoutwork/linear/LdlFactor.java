package org.stoutwork.linear;

/**
 * The factorisation P A P' = L D L' of a sparse symmetric positive definite matrix, by groups of
 * columns that share a row list.
 *
 * <p>Immutable after it has been made, so any number of threads may solve with it. Start with
 * {@link #of(SparseSymmetric, int[])}; {@link #of(SparseSymmetric, LdlPattern)} takes over the
 * analysis when only the numbers have changed; {@link LdlRepeat} keeps the storage as well.
 */
public final class LdlFactor implements Factorisation {
  /** A pivot smaller than this part of its diagonal entry counts as no resistance at all. */
  public static final double SMALLEST_PIVOT_RATIO = 1e-13;

  /** Rounding of a last pivot that ought to be zero, seen to grow with the number of unknowns. */
  private static final double ROUNDING_PER_UNKNOWN = 16 * 0x1p-52;

  private final LdlNumeric numeric;
  private final LdlPattern pattern;

  private LdlFactor(LdlNumeric numeric) {
    this.numeric = numeric;
    this.pattern = numeric.pattern;
  }

  /**
   * Factorises {@code matrix}, eliminating unknowns in the given order (position to unknown), as
   * {@link MinimumDegree} makes it.
   */
  public static Factorisation of(SparseSymmetric matrix, int[] order) {
    return of(matrix, LdlPattern.of(matrix, order));
  }

  /**
   * Factorises a matrix with entries in the same places as the one that {@code pattern} was made
   * for.
   *
   * @throws IllegalArgumentException when the entries lie elsewhere
   */
  public static Factorisation of(SparseSymmetric matrix, LdlPattern pattern) {
    if (!pattern.fits(matrix)) {
      throw new IllegalArgumentException("the matrix has entries in other places than its pattern");
    }
    LdlNumeric numeric = new LdlNumeric(pattern);
    int bad = numeric.run(matrix);
    return bad < 0 ? new LdlFactor(numeric) : singular(numeric, bad);
  }

  /** The smallest pivot, relative to its diagonal entry, that counts as resistance. */
  static double smallestPivotRatio(int unknowns) {
    return Math.max(SMALLEST_PIVOT_RATIO, ROUNDING_PER_UNKNOWN * unknowns);
  }

  static Singular singular(LdlNumeric numeric, int position) {
    double diagonal = numeric.failedDiagonal();
    double ratio = diagonal == 0 ? 0 : numeric.pivot[position] / Math.abs(diagonal);
    return new Singular(numeric.pattern.order[position], ratio, numeric.freeDirection(position));
  }

  /** Number of unknowns. */
  public int size() {
    return pattern.size;
  }

  /** What depends on the places of the entries alone, for use with other numbers. */
  public LdlPattern pattern() {
    return pattern;
  }

  /** The order of elimination, position to unknown. */
  public int[] order() {
    return pattern.order();
  }

  /** Entries of L below its unit diagonal that are not zero for general numbers. */
  public int entries() {
    return pattern.entries();
  }

  /** The pivots, by unknown. */
  public double[] pivots() {
    double[] byUnknown = new double[pattern.size];
    for (int k = 0; k < byUnknown.length; k++) {
      byUnknown[pattern.order[k]] = numeric.pivot[k];
    }
    return byUnknown;
  }

  /** Solves A x = b; {@code b} is left as it is. */
  public double[] solve(double[] b) {
    double[] y = new double[pattern.size];
    for (int k = 0; k < y.length; k++) {
      y[k] = b[pattern.order[k]];
    }
    numeric.solve(y, new double[pattern.longest]);
    double[] x = new double[y.length];
    for (int k = 0; k < y.length; k++) {
      x[pattern.order[k]] = y[k];
    }
    return x;
  }

  /**
   * Solves for many right-hand sides, several at a time; the answers are those of {@link #solve} to
   * the bit. Where a side is zero its beginning is skipped, so single forces are cheap.
   *
   * @param sides right-hand sides, left as they are
   * @return one solution a side
   */
  public double[][] solveAll(double[][] sides) {
    double[][] answers = new double[sides.length][pattern.size];
    if (sides.length == 1) {
      answers[0] = solve(sides[0]);
    } else if (sides.length > 1) {
      LdlTile tile = new LdlTile(numeric);
      for (int from = 0; from < sides.length; from += LdlTile.WIDTH) {
        tile.solve(sides, answers, from, Math.min(sides.length, from + LdlTile.WIDTH));
      }
    }
    return answers;
  }
}
