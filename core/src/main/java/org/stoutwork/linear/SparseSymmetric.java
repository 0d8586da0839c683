package org.stoutwork.linear;

import java.util.Arrays;

/**
 * A symmetric sparse matrix, of which the upper triangle is stored by columns.
 *
 * <p>Immutable. Build one with {@link #builder(int)}; entries added several times are summed.
 */
public final class SparseSymmetric {
  private final int size;
  private final int[] columnStart;
  private final int[] row;
  private final double[] value;

  private SparseSymmetric(int size, int[] columnStart, int[] row, double[] value) {
    this.size = size;
    this.columnStart = columnStart;
    this.row = row;
    this.value = value;
  }

  /** Begins a matrix with {@code size} rows. */
  public static Builder builder(int size) {
    return new Builder(size);
  }

  /** Number of rows. */
  public int size() {
    return size;
  }

  /** Number of stored entries of the upper triangle. */
  public int entries() {
    return columnStart[size];
  }

  int columnStart(int column) {
    return columnStart[column];
  }

  int row(int entry) {
    return row[entry];
  }

  double value(int entry) {
    return value[entry];
  }

  /** Receives the entries of a matrix one by one. */
  @FunctionalInterface
  public interface Visitor {
    /** One entry of the upper triangle, the diagonal included. */
    void entry(int row, int column, double value);
  }

  /** Shows every stored entry of the upper triangle, column by column. */
  public void forEach(Visitor visitor) {
    for (int j = 0; j < size; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        visitor.entry(row[p], j, value[p]);
      }
    }
  }

  /** Whether both have their entries in the same places, whatever the numbers. */
  boolean hasPlacesOf(SparseSymmetric other) {
    return size == other.size
        && (row == other.row || Arrays.equals(row, other.row))
        && (columnStart == other.columnStart || Arrays.equals(columnStart, other.columnStart));
  }

  /** The diagonal, zero where nothing is stored. */
  public double[] diagonal() {
    double[] diagonal = new double[size];
    for (int j = 0; j < size; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        if (row[p] == j) {
          diagonal[j] = value[p];
        }
      }
    }
    return diagonal;
  }

  /** This matrix times {@code x}. */
  public double[] times(double[] x) {
    double[] y = new double[size];
    for (int j = 0; j < size; j++) {
      double sum = 0;
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        int i = row[p];
        if (i == j) {
          sum += value[p] * x[j];
        } else {
          sum += value[p] * x[i];
          y[i] += value[p] * x[j];
        }
      }
      y[j] += sum;
    }
    return y;
  }

  /** Largest absolute row sum of D A D, where D is the diagonal matrix of {@code scale}. */
  double scaledNorm(double[] scale) {
    double[] sum = new double[size];
    for (int j = 0; j < size; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        double size = Math.abs(value[p]) * scale[row[p]] * scale[j];
        sum[j] += size;
        if (row[p] != j) {
          sum[row[p]] += size;
        }
      }
    }
    return Arrays.stream(sum).max().orElse(0);
  }

  /** All entries as a full matrix; for small systems and for comparison. */
  public double[][] toDense() {
    double[][] dense = new double[size][size];
    for (int j = 0; j < size; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        dense[row[p]][j] = value[p];
        dense[j][row[p]] = value[p];
      }
    }
    return dense;
  }

  /** This matrix plus {@code factor} times another of the same size. */
  public SparseSymmetric plus(double factor, SparseSymmetric other) {
    if (other.size != size) {
      throw new IllegalArgumentException("sizes differ: " + size + " and " + other.size);
    }
    Builder sum = builder(size);
    addTo(sum, 1);
    other.addTo(sum, factor);
    return sum.build();
  }

  private void addTo(Builder sum, double factor) {
    for (int j = 0; j < size; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        sum.add(row[p], j, factor * value[p]);
      }
    }
  }

  /** Collects entries in any order. */
  public static final class Builder {
    private final int size;
    private int count;
    private int[] rows = new int[256];
    private int[] columns = new int[256];
    private double[] values = new double[256];

    private Builder(int size) {
      if (size < 0) {
        throw new IllegalArgumentException("a matrix cannot have " + size + " rows");
      }
      this.size = size;
    }

    /**
     * Adds to the entry ({@code i}, {@code j}) of the upper triangle; a pair below the diagonal is
     * mirrored, so give each symmetric pair once only.
     */
    public Builder add(int i, int j, double v) {
      if (count == values.length) {
        rows = Arrays.copyOf(rows, 2 * count);
        columns = Arrays.copyOf(columns, 2 * count);
        values = Arrays.copyOf(values, 2 * count);
      }
      rows[count] = Math.min(i, j);
      columns[count] = Math.max(i, j);
      values[count++] = v;
      return this;
    }

    /** Sums duplicates and sorts each column by row. */
    public SparseSymmetric build() {
      int[] order = sortedByColumnThenRow();
      int[] start = new int[size + 1];
      int[] row = new int[count];
      double[] value = new double[count];
      int filled = 0;
      int column = -1;
      for (int t : order) {
        while (column < columns[t]) {
          start[++column] = filled;
        }
        if (filled > start[column] && row[filled - 1] == rows[t]) {
          value[filled - 1] += values[t];
        } else {
          row[filled] = rows[t];
          value[filled++] = values[t];
        }
      }
      while (column < size) {
        start[++column] = filled;
      }
      return new SparseSymmetric(
          size, start, Arrays.copyOf(row, filled), Arrays.copyOf(value, filled));
    }

    /** Two stable counting sorts, so that the order of equal places is that of adding. */
    private int[] sortedByColumnThenRow() {
      int[] identity = new int[count];
      Arrays.setAll(identity, t -> t);
      return countingSort(countingSort(identity, rows), columns);
    }

    private int[] countingSort(int[] order, int[] key) {
      int[] next = new int[size + 1];
      for (int t : order) {
        next[key[t] + 1]++;
      }
      for (int k = 0; k < size; k++) {
        next[k + 1] += next[k];
      }
      int[] sorted = new int[order.length];
      for (int t : order) {
        sorted[next[key[t]]++] = t;
      }
      return sorted;
    }
  }
}
