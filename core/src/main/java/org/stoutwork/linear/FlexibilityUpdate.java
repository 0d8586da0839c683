package org.stoutwork.linear;

/**
 * What a linear structure does when the flexibility of some of its parts changes by Δ: with the
 * part forces q = q0 - S e, where e is the change of their deformation, (I + Δ S) e = Δ q0 + t. The
 * flexibility form of the Woodbury identity; neither a softer nor a stiffer part divides by zero,
 * because S and Δ are never inverted. Immutable; each thread brings its own {@link Work}.
 */
public final class FlexibilityUpdate {
  private final int rank;
  private final double[][] resistance;
  private final double[] scale;

  /**
   * Makes an update.
   *
   * @param resistance S, r × r
   * @param own the parts' own flexibilities, by which unlike units are made comparable, positive
   */
  public FlexibilityUpdate(double[][] resistance, double[] own) {
    this.rank = own.length;
    this.resistance = new double[rank][rank];
    this.scale = new double[rank];
    for (int i = 0; i < rank; i++) {
      scale[i] = Math.sqrt(own[i]);
    }
    for (int i = 0; i < rank; i++) {
      for (int j = 0; j < rank; j++) {
        double mean = (resistance[i][j] + resistance[j][i]) / 2;
        this.resistance[i][j] = mean * scale[i] * scale[j];
      }
    }
  }

  /** Storage for one thread. */
  public Work work(int cases) {
    return new Work(rank, cases);
  }

  /** One thread's storage; the caller fills {@link #change} and {@link #side} before solving. */
  public static final class Work {
    private final double[][] change;
    private final double[][] table;
    private final double[][] side;
    private double smallest;

    private Work(int rank, int cases) {
      change = new double[rank][rank];
      table = new double[rank][rank + cases];
      side = new double[rank][cases];
    }

    /** Δ, r × r, to be written by the caller. */
    public double[][] change() {
      return change;
    }

    /** Δ q0 + t, r × cases, to be written by the caller; holds e after solving. */
    public double[][] side() {
      return side;
    }

    /**
     * Smallest pivot relative to the largest number of its row before elimination, divided by the
     * largest change relative to the part's own flexibility when that is above one: its inverse
     * says by how much rounding may grow.
     */
    public double smallestPivot() {
      return smallest;
    }
  }

  /**
   * Solves for e.
   *
   * @param limit smallest acceptable {@link Work#smallestPivot}
   * @return false when a pivot is below the limit
   */
  public boolean solve(Work w, double limit) {
    int cases = rank == 0 ? 0 : w.side[0].length;
    for (int i = 0; i < rank; i++) {
      double[] row = w.table[i];
      for (int j = 0; j < rank; j++) {
        double sum = i == j ? 1 : 0;
        for (int m = 0; m < rank; m++) {
          sum += w.change[i][m] / (scale[i] * scale[m]) * resistance[m][j];
        }
        row[j] = sum;
      }
      for (int c = 0; c < cases; c++) {
        row[rank + c] = w.side[i][c] / scale[i];
      }
    }
    double largest = 1;
    for (int i = 0; i < rank; i++) {
      for (int j = 0; j < rank; j++) {
        largest = Math.max(largest, Math.abs(w.change[i][j]) / (scale[i] * scale[j]));
      }
      normalise(w.table[i]);
    }
    w.smallest = 1;
    for (int j = 0; j < rank; j++) {
      pivot(w.table, j);
      double p = Math.abs(w.table[j][j]) / largest;
      w.smallest = Math.min(w.smallest, p);
      if (!(p >= limit)) {
        return false;
      }
      for (int i = j + 1; i < rank; i++) {
        double factor = w.table[i][j] / w.table[j][j];
        Strips.subtract(w.table[i], j, rank + cases, factor, w.table[j]);
      }
    }
    back(w, cases);
    return true;
  }

  private void normalise(double[] row) {
    double largest = 0;
    for (int j = 0; j < rank; j++) {
      largest = Math.max(largest, Math.abs(row[j]));
    }
    Strips.scale(row, 0, row.length, largest == 0 ? 1 : 1 / largest);
  }

  private void pivot(double[][] table, int column) {
    int best = column;
    for (int i = column + 1; i < rank; i++) {
      if (Math.abs(table[i][column]) > Math.abs(table[best][column])) {
        best = i;
      }
    }
    double[] held = table[best];
    table[best] = table[column];
    table[column] = held;
  }

  private void back(Work w, int cases) {
    for (int i = rank - 1; i >= 0; i--) {
      double[] row = w.table[i];
      for (int c = 0; c < cases; c++) {
        double sum = row[rank + c];
        for (int j = i + 1; j < rank; j++) {
          sum -= row[j] * w.table[j][rank + c];
        }
        row[rank + c] = sum / row[i];
      }
    }
    for (int i = 0; i < rank; i++) {
      for (int c = 0; c < cases; c++) {
        w.side[i][c] = w.table[i][rank + c] * scale[i];
      }
    }
  }
}
