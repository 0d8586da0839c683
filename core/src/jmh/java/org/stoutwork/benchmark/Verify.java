package org.stoutwork.benchmark;

import java.util.Arrays;
import org.stoutwork.linear.SparseSymmetric;

/** A timed path counts only when it gives the right answer. */
final class Verify {
  private static final double ALLOWED = 1e-9;

  private Verify() {}

  private static double largest(double[] x) {
    return Arrays.stream(x).map(Math::abs).max().orElse(0);
  }

  /** Throws unless |K x - f| is below 1e-9 |f|. */
  static void residual(SparseSymmetric k, double[] x, double[] f) {
    double[] rest = k.times(x);
    for (int i = 0; i < rest.length; i++) {
      rest[i] -= f[i];
    }
    if (!(largest(rest) <= ALLOWED * largest(f))) {
      throw new IllegalStateException("residual " + largest(rest) / largest(f));
    }
  }

  /** Throws unless both agree to 1e-9 of the largest. */
  static void same(double[] expected, double[] found) {
    double size = largest(expected);
    for (int i = 0; i < expected.length; i++) {
      if (!(Math.abs(expected[i] - found[i]) <= ALLOWED * size)) {
        throw new IllegalStateException(
            "entry " + i + ": expected " + expected[i] + ", found " + found[i]);
      }
    }
  }
}
