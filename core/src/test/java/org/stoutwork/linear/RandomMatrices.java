package org.stoutwork.linear;

import java.util.Random;

/** Symmetric positive definite matrices that look like those of small skewed frames. */
final class RandomMatrices {
  private RandomMatrices() {}

  /** Blocks of six coupled along a random graph; {@code softness} sets how weakly it is held. */
  static SparseSymmetric frameLike(Random random, int blocks, double softness) {
    SparseSymmetric.Builder builder = SparseSymmetric.builder(6 * blocks);
    for (int b = 0; b < blocks; b++) {
      couple(builder, random, b, (b + 1) % blocks);
      couple(builder, random, b, random.nextInt(blocks));
    }
    for (int i = 0; i < 6 * blocks; i++) {
      builder.add(i, i, softness * (1 + random.nextDouble()));
    }
    return builder.build();
  }

  private static void couple(SparseSymmetric.Builder builder, Random random, int a, int b) {
    if (a == b) {
      return;
    }
    for (int rank = 0; rank < 6; rank++) {
      double[] v = new double[12];
      for (int i = 0; i < 12; i++) {
        v[i] = random.nextGaussian();
      }
      for (int i = 0; i < 12; i++) {
        for (int j = i; j < 12; j++) {
          builder.add(at(a, b, i), at(a, b, j), v[i] * v[j]);
        }
      }
    }
  }

  private static int at(int a, int b, int i) {
    return i < 6 ? 6 * a + i : 6 * b + i - 6;
  }

  static int[] groups(int blocks) {
    int[] group = new int[6 * blocks];
    for (int i = 0; i < group.length; i++) {
      group[i] = i / 6;
    }
    return group;
  }

  static double[] vector(Random random, int n) {
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = random.nextGaussian();
    }
    return x;
  }
}
