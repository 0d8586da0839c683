package org.stoutwork.linear;

import java.util.Optional;

/**
 * One thread's storage for factorising matrices of one pattern one after the other: nothing is
 * allocated once it has been made. Not safe to share; make one a thread from the same {@link
 * LdlPattern}.
 */
public final class LdlRepeat {
  private final LdlNumeric numeric;
  private final double[] y;
  private final double[] gathered;
  private boolean ready;

  /** Makes the storage. */
  public LdlRepeat(LdlPattern pattern) {
    this.numeric = new LdlNumeric(pattern);
    this.y = new double[pattern.size];
    this.gathered = new double[pattern.longest];
  }

  /**
   * Factorises other numbers at the pattern's places. The caller answers for the places: see {@link
   * LdlPattern#fits}.
   *
   * @return what was met that offers no resistance, or nothing when all is well
   */
  public Optional<Factorisation.Singular> factor(SparseSymmetric matrix) {
    int bad = numeric.run(matrix);
    ready = bad < 0;
    return ready ? Optional.empty() : Optional.of(LdlFactor.singular(numeric, bad));
  }

  /**
   * Solves A x = b with the last factorisation.
   *
   * @param b right-hand side, left as it is
   * @param x receives the solution; may be {@code b} itself
   * @throws IllegalStateException when the last factorisation failed
   */
  public void solve(double[] b, double[] x) {
    if (!ready) {
      throw new IllegalStateException("nothing is factorised");
    }
    int[] order = numeric.pattern.order;
    for (int k = 0; k < y.length; k++) {
      y[k] = b[order[k]];
    }
    numeric.solve(y, gathered);
    for (int k = 0; k < y.length; k++) {
      x[order[k]] = y[k];
    }
  }
}
