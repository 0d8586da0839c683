package org.stoutwork.linear;

/**
 * An estimate of the condition number of a factorised matrix after scaling its diagonal to one, so
 * that millimetres and radians do not count as bad conditioning.
 *
 * @param number about |A| |A^-1| in the 1-norm, from below, rarely by more than a factor of 3
 * @param weakest the vector (unscaled) that the matrix resists least, as far as the estimate saw
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
public record Condition(double number, double[] weakest) {

  /**
   * Hager's estimate (W. W. Hager, SIAM J. Sci. Stat. Comput. 5, 1984) of the inverse's norm, with
   * an alternating start vector as a second opinion (N. J. Higham, ACM TOMS 14, 1988).
   */
  public static Condition of(SparseSymmetric matrix, LdlFactor factor) {
    int n = matrix.size();
    if (n == 0) {
      return new Condition(1, new double[0]);
    }
    double[] scale = matrix.diagonal();
    for (int i = 0; i < n; i++) {
      scale[i] = 1 / Math.sqrt(scale[i]);
    }
    double[] x = new double[n];
    double[] alternating = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 1.0 / n;
      alternating[i] = (i % 2 == 0 ? 1 : -1) * (1 + i / Math.max(1.0, n - 1)) / (1.5 * n);
    }
    double best = 0;
    double[] weakest = x;
    for (int step = 0; step < 5; step++) {
      double[] y = scaledSolve(factor, scale, x);
      double norm = oneNorm(y);
      if (step > 0 && norm <= best) {
        break;
      }
      best = norm;
      weakest = y;
      double[] sign = new double[n];
      for (int i = 0; i < n; i++) {
        sign[i] = y[i] >= 0 ? 1 : -1;
      }
      x = unit(n, largest(scaledSolve(factor, scale, sign)));
    }
    double[] second = scaledSolve(factor, scale, alternating);
    if (oneNorm(second) > best) {
      best = oneNorm(second);
      weakest = second;
    }
    double[] unscaled = new double[n];
    for (int i = 0; i < n; i++) {
      unscaled[i] = weakest[i] * scale[i];
    }
    return new Condition(best * matrix.scaledNorm(scale), unscaled);
  }

  private static double[] scaledSolve(LdlFactor factor, double[] scale, double[] x) {
    double[] b = new double[x.length];
    for (int i = 0; i < b.length; i++) {
      b[i] = x[i] / scale[i];
    }
    double[] y = factor.solve(b);
    for (int i = 0; i < y.length; i++) {
      y[i] /= scale[i];
    }
    return y;
  }

  private static double oneNorm(double[] y) {
    double sum = 0;
    for (double v : y) {
      sum += Math.abs(v);
    }
    return sum;
  }

  private static int largest(double[] z) {
    int at = 0;
    for (int i = 1; i < z.length; i++) {
      if (Math.abs(z[i]) > Math.abs(z[at])) {
        at = i;
      }
    }
    return at;
  }

  private static double[] unit(int n, int at) {
    double[] e = new double[n];
    e[at] = 1;
    return e;
  }
}
