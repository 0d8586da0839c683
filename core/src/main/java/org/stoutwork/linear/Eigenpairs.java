package org.stoutwork.linear;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The largest positive μ with B x = μ K x, K being positive definite and factorised, B symmetric.
 *
 * <p>With B the mass, 1/μ is the square of a circular frequency; with B minus the geometric
 * stiffness, 1/μ is a buckling factor. Method: a block Krylov space grown with full
 * reorthogonalisation in the K product, the projected problem solved densely (B. N. Parlett,
 * <em>The Symmetric Eigenvalue Problem</em>, chapter 13). Blocks of several vectors find multiple
 * roots.
 */
public final class Eigenpairs {
  private static final int BLOCK = 4;
  private static final double SETTLED = 1e-11;

  private final SparseSymmetric k;
  private final LdlFactor factor;
  private final SparseSymmetric b;
  private final List<double[]> basis = new ArrayList<>();
  private final List<double[]> stiff = new ArrayList<>();
  private final List<double[]> image = new ArrayList<>();

  /**
   * One eigenvalue and its vector.
   *
   * @param value μ
   * @param vector x with x' K x = 1
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  public record Pair(double value, double[] vector) {}

  private Eigenpairs(SparseSymmetric k, LdlFactor factor, SparseSymmetric b) {
    this.k = k;
    this.factor = factor;
    this.b = b;
  }

  /** Up to {@code count} pairs with positive μ, largest first. */
  public static List<Pair> largest(
      SparseSymmetric k, LdlFactor factor, SparseSymmetric b, int count) {
    return new Eigenpairs(k, factor, b).run(count);
  }

  private List<Pair> run(int count) {
    int n = k.size();
    List<double[]> block = new ArrayList<>();
    for (int c = 0; c < Math.max(BLOCK, Math.min(count, 8)); c++) {
      block.add(factor.solve(b.times(startVector(n, c))));
    }
    List<Pair> previous = List.of();
    while (true) {
      int before = basis.size();
      block.forEach(this::join);
      boolean complete = basis.size() == before || basis.size() >= n;
      List<Pair> found = ritz(count);
      if (complete || (found.size() == count && settled(previous, found))) {
        return found;
      }
      previous = found;
      block = new ArrayList<>();
      for (int i = before; i < basis.size(); i++) {
        block.add(factor.solve(image.get(i)));
      }
    }
  }

  /** Fixed numbers without pattern, so that no eigenvector is missed and runs repeat exactly. */
  private static double[] startVector(int n, int c) {
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = Math.sin(1.0 + 12.9898 * (i + 1) + 78.233 * (c + 1) * (1 + (i % 17)));
    }
    return x;
  }

  private void join(double[] candidate) {
    double[] x = candidate;
    double original = Math.sqrt(Math.max(0, dot(x, k.times(x))));
    if (original == 0 || basis.size() >= k.size()) {
      return;
    }
    for (int pass = 0; pass < 3; pass++) {
      for (int i = 0; i < basis.size(); i++) {
        double along = dot(stiff.get(i), x);
        for (int r = 0; r < x.length; r++) {
          x[r] -= along * basis.get(i)[r];
        }
      }
    }
    double[] kx = k.times(x);
    double size = Math.sqrt(Math.max(0, dot(x, kx)));
    if (size <= 1e-10 * original) {
      return;
    }
    for (int r = 0; r < x.length; r++) {
      x[r] /= size;
      kx[r] /= size;
    }
    basis.add(x);
    stiff.add(kx);
    image.add(b.times(x));
  }

  private List<Pair> ritz(int count) {
    int m = basis.size();
    List<Pair> pairs = new ArrayList<>();
    if (m == 0) {
      return pairs;
    }
    double[][] projected = new double[m][m];
    for (int i = 0; i < m; i++) {
      for (int j = 0; j <= i; j++) {
        projected[i][j] = dot(basis.get(j), image.get(i));
        projected[j][i] = projected[i][j];
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(projected, false));
    double[] values = eigen.getRealEigenvalues();
    Integer[] order = new Integer[m];
    java.util.Arrays.setAll(order, i -> i);
    java.util.Arrays.sort(order, (p, q) -> Double.compare(values[q], values[p]));
    double largest = Math.max(Math.abs(values[order[0]]), Math.abs(values[order[m - 1]]));
    for (int c = 0; c < Math.min(count, m); c++) {
      if (values[order[c]] > 1e-12 * largest) {
        pairs.add(new Pair(values[order[c]], combine(eigen.getEigenvector(order[c]).toArray())));
      }
    }
    return pairs;
  }

  private double[] combine(double[] weights) {
    double[] x = new double[k.size()];
    for (int i = 0; i < weights.length; i++) {
      for (int r = 0; r < x.length; r++) {
        x[r] += weights[i] * basis.get(i)[r];
      }
    }
    return x;
  }

  private static boolean settled(List<Pair> previous, List<Pair> found) {
    if (previous.size() != found.size()) {
      return false;
    }
    for (int i = 0; i < found.size(); i++) {
      double value = found.get(i).value();
      if (Math.abs(value - previous.get(i).value()) > SETTLED * value) {
        return false;
      }
    }
    return true;
  }

  private static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }
}
