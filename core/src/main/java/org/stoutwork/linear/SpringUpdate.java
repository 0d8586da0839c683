package org.stoutwork.linear;

/**
 * What a linear structure does when some of its rigid joints become springs, from what it does when
 * they are rigid: r slips e with (diag(k) + S) e = p, where S is the structure's resistance against
 * unit slips and p the force that each rigid joint passes on.
 *
 * <p>This is the Sherman-Morrison-Woodbury identity (M. A. Woodbury, Princeton Statistical Research
 * Group, Memorandum 42, 1950) written for the forces of the springs instead of their stiffness, so
 * a free joint (k = 0) and a rigid one (k infinite) are ordinary values. S is symmetric and
 * positive semi-definite, hence one small L D L' a variant and no pivoting. Immutable; each thread
 * brings its own {@link Work}.
 */
public final class SpringUpdate {
  private final int rank;
  private final int cases;
  private final int outputs;
  private final double[][] resistance;
  private final double[] own;
  private final double[][] force;
  private final double[][] base;
  private final double[][] effect;

  /**
   * Makes an update.
   *
   * @param resistance S, r × r: force of spring i (first index) against a unit slip of spring j
   * @param own what each spring is measured by: the resistance of its own member against the slip
   *     with both nodes held, positive
   * @param force p, r × cases
   * @param base figures of interest with rigid joints, outputs × cases
   * @param effect change of each figure by a unit slip, outputs × r
   */
  public SpringUpdate(
      double[][] resistance, double[] own, double[][] force, double[][] base, double[][] effect) {
    this.rank = own.length;
    this.cases = rank == 0 ? (base.length == 0 ? 0 : base[0].length) : force[0].length;
    this.outputs = base.length;
    this.own = own.clone();
    this.force = copy(force);
    this.base = copy(base);
    this.effect = copy(effect);
    this.resistance = copy(resistance);
    for (int i = 0; i < rank; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (resistance[i][j] + resistance[j][i]) / 2;
        this.resistance[i][j] = mean;
        this.resistance[j][i] = mean;
      }
    }
  }

  private static double[][] copy(double[][] a) {
    double[][] copy = new double[a.length][];
    for (int i = 0; i < a.length; i++) {
      copy[i] = a[i].clone();
    }
    return copy;
  }

  /** Number of springs. */
  public int rank() {
    return rank;
  }

  /** Storage for one thread. */
  public Work work() {
    return new Work(rank, cases, outputs);
  }

  /** One thread's storage and its last answer. */
  public static final class Work {
    // Row i of (diag(k) + S | p) from column i on; the right-hand sides are carried along.
    private final double[][] row;
    private final double[][] value;
    private double softness;

    private Work(int rank, int cases, int outputs) {
      row = new double[rank][rank + cases];
      value = new double[outputs][cases];
    }

    /** A figure of interest. */
    public double value(int output, int loadCase) {
      return value[output][loadCase];
    }

    /** Slip of a spring, mm or rad. */
    public double slip(int spring, int loadCase) {
      return row[spring][row.length + loadCase];
    }

    /**
     * Smallest pivot relative to the spring's constant plus its member's own resistance: 1 where
     * nothing gives way, 0 for a mechanism; its inverse says by how much rounding may grow.
     */
    public double smallestPivot() {
      return softness;
    }
  }

  /**
   * Finds all figures for the spring constants {@code k}.
   *
   * @param k constants, 0 (free) to infinity (rigid)
   * @param limit smallest acceptable {@link Work#smallestPivot}
   * @return false when a pivot is below the limit; the figures are then not set
   */
  public boolean solve(double[] k, double limit, Work w) {
    w.softness = 1;
    int width = rank + cases;
    double[][] row = w.row;
    for (int i = 0; i < rank; i++) {
      System.arraycopy(resistance[i], i, row[i], i, rank - i);
      System.arraycopy(force[i], 0, row[i], rank, cases);
      row[i][i] += k[i];
    }
    for (int j = 0; j < rank; j++) {
      double[] source = row[j];
      double pivot = source[j];
      double ratio = pivot == Double.POSITIVE_INFINITY ? 1 : pivot / (k[j] + own[j]);
      if (!(ratio >= limit)) {
        w.softness = Math.max(0, ratio);
        return false;
      }
      w.softness = Math.min(w.softness, ratio);
      double inverse = 1 / pivot;
      source[j] = inverse;
      for (int i = j + 1; i < rank; i++) {
        double factor = source[i] * inverse;
        if (factor != 0) {
          Strips.subtract(row[i], i, width, factor, source);
        }
      }
    }
    back(row);
    read(w);
    return true;
  }

  /** Back substitution; slips take the place of the carried right-hand sides. */
  private void back(double[][] row) {
    for (int i = rank - 1; i >= 0; i--) {
      double[] own = row[i];
      for (int j = i + 1; j < rank; j++) {
        Strips.subtract(own, rank, rank + cases, own[j], row[j]);
      }
      Strips.scale(own, rank, rank + cases, own[i]);
    }
  }

  private void read(Work w) {
    for (int o = 0; o < outputs; o++) {
      double[] value = w.value[o];
      System.arraycopy(base[o], 0, value, 0, cases);
      double[] by = effect[o];
      for (int i = 0; i < rank; i++) {
        double a = by[i];
        double[] slip = w.row[i];
        for (int c = 0; c < cases; c++) {
          value[c] += a * slip[rank + c];
        }
      }
    }
  }
}
