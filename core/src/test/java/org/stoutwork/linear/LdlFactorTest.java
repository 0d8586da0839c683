package org.stoutwork.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.junit.jupiter.api.Test;

class LdlFactorTest {
  private static LdlFactor factor(SparseSymmetric a, int blocks) {
    int[] order = MinimumDegree.order(a, RandomMatrices.groups(blocks));
    return assertInstanceOf(LdlFactor.class, LdlFactor.of(a, order));
  }

  @Property(tries = 60)
  void it_solves_as_the_sparse_twin_and_the_dense_one(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 14) int blocks) {
    Random random = new Random(seed);
    SparseSymmetric a = RandomMatrices.frameLike(random, blocks, 0.1);
    double[] b = RandomMatrices.vector(random, a.size());
    double[] x = factor(a, blocks).solve(b);
    double size = Arrays.stream(x).map(Math::abs).max().orElseThrow();
    double[][] full = a.toDense();
    double[] dense =
        new CholeskyDecomposition(new Array2DRowRealMatrix(full), 1e-9, 1e-12)
            .getSolver()
            .solve(new ArrayRealVector(b))
            .toArray();
    assertArrayEquals(dense, x, 1e-9 * size);
    assertArrayEquals(ejml(full, b), x, 1e-9 * size);
  }

  private static double[] ejml(double[][] full, double[] b) {
    int n = b.length;
    DMatrixSparseCSC a = new DMatrixSparseCSC(n, n);
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        if (full[i][j] != 0) {
          a.set(i, j, full[i][j]);
        }
      }
    }
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    assertTrue(solver.setA(a));
    DMatrixRMaj x = new DMatrixRMaj(n, 1);
    solver.solve(new DMatrixRMaj(n, 1, true, b.clone()), x);
    return x.getData();
  }

  @Property(tries = 30)
  void many_right_hand_sides_get_the_same_bits_as_one_at_a_time(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 140) int sides) {
    Random random = new Random(seed);
    int blocks = 2 + random.nextInt(20);
    SparseSymmetric a = RandomMatrices.frameLike(random, blocks, 0.1);
    LdlFactor factor = factor(a, blocks);
    double[][] b = new double[sides][a.size()];
    for (int c = 0; c < sides; c++) {
      if (c % 2 == 0) {
        b[c][random.nextInt(a.size())] = random.nextGaussian();
      } else {
        b[c] = RandomMatrices.vector(random, a.size());
      }
    }
    double[][] all = factor.solveAll(b);
    for (int c = 0; c < sides; c++) {
      double[] one = factor.solve(b[c]);
      assertArrayEquals(one, all[c]);
      double[] back = a.times(one);
      double size = Arrays.stream(b[c]).map(Math::abs).max().orElseThrow();
      assertArrayEquals(b[c], back, 1e-9 * size);
    }
  }

  @Property(tries = 30)
  void other_numbers_at_the_same_places_factorise_as_if_analysed_afresh(@ForAll long seed) {
    Random random = new Random(seed);
    int blocks = 3 + random.nextInt(30);
    long graph = random.nextLong();
    SparseSymmetric first = RandomMatrices.frameLike(new Random(graph), blocks, 0.1);
    SparseSymmetric other = RandomMatrices.frameLike(new Random(graph), blocks, 3.7);
    LdlPattern pattern = factor(first, blocks).pattern();
    assertTrue(pattern.fits(other));
    LdlFactor again = assertInstanceOf(LdlFactor.class, LdlFactor.of(other, pattern));
    double[] b = RandomMatrices.vector(random, first.size());
    double[] expected = factor(other, blocks).solve(b);
    assertArrayEquals(expected, again.solve(b));
    LdlRepeat repeat = new LdlRepeat(pattern);
    double[] x = new double[b.length];
    for (SparseSymmetric a : List.of(first, other)) {
      assertTrue(repeat.factor(a).isEmpty());
      repeat.solve(b, x);
    }
    assertArrayEquals(expected, x);
  }

  @Test
  void a_pattern_refuses_a_matrix_with_other_places() {
    SparseSymmetric a = SparseSymmetric.builder(2).add(0, 0, 2).add(0, 1, 1).add(1, 1, 2).build();
    SparseSymmetric b = SparseSymmetric.builder(2).add(0, 0, 2).add(1, 1, 2).build();
    LdlPattern pattern = LdlPattern.of(a, new int[] {0, 1});
    assertThrows(IllegalArgumentException.class, () -> LdlFactor.of(b, pattern));
    LdlRepeat repeat = new LdlRepeat(pattern);
    assertThrows(IllegalStateException.class, () -> repeat.solve(new double[2], new double[2]));
    SparseSymmetric c = SparseSymmetric.builder(2).add(0, 0, 2).add(0, 1, 2).add(1, 1, 2).build();
    assertEquals(1, repeat.factor(c).orElseThrow().unknown());
  }

  @Test
  void a_matrix_without_resistance_in_one_direction_names_that_direction() {
    // Two unknowns joined by a spring, nothing to the ground: both move alike.
    SparseSymmetric a =
        SparseSymmetric.builder(3).add(0, 0, 2).add(0, 2, -2).add(2, 2, 2).add(1, 1, 7).build();
    Factorisation.Singular singular =
        assertInstanceOf(Factorisation.Singular.class, LdlFactor.of(a, new int[] {0, 1, 2}));
    double[] v = singular.direction();
    assertEquals(v[2], v[0], 1e-12);
    assertEquals(0, v[1], 1e-12);
    assertTrue(Math.abs(v[0]) > 0.1);
  }

  @Test
  void an_indefinite_matrix_is_refused() {
    SparseSymmetric a = SparseSymmetric.builder(2).add(0, 0, 1).add(0, 1, 3).add(1, 1, 1).build();
    assertInstanceOf(Factorisation.Singular.class, LdlFactor.of(a, new int[] {0, 1}));
  }

  @Test
  void ordering_keeps_a_star_from_filling() {
    int spokes = 40;
    SparseSymmetric.Builder star = SparseSymmetric.builder(spokes + 1);
    star.add(0, 0, 100);
    int[] group = new int[spokes + 1];
    for (int i = 1; i <= spokes; i++) {
      star.add(0, i, -1).add(i, i, 2.5);
      group[i] = i;
    }
    SparseSymmetric a = star.build();
    LdlFactor factor = (LdlFactor) LdlFactor.of(a, MinimumDegree.order(a, group));
    assertEquals(spokes, factor.entries());
    int[] natural = new int[spokes + 1];
    Arrays.setAll(natural, i -> i);
    LdlFactor filled = (LdlFactor) LdlFactor.of(a, natural);
    assertEquals(spokes * (spokes + 1) / 2, filled.entries());
  }

  @Property(tries = 40)
  void the_condition_estimate_is_within_a_factor_of_the_true_one(@ForAll long seed) {
    Random random = new Random(seed);
    int blocks = 3 + random.nextInt(5);
    double softness = Math.pow(10, -6 * random.nextDouble());
    SparseSymmetric a = RandomMatrices.frameLike(random, blocks, softness);
    double estimate = Condition.of(a, factor(a, blocks)).number();
    double truth = trueCondition(a);
    assertTrue(estimate <= truth * 1.000001, estimate + " above " + truth);
    assertTrue(estimate >= truth / 5, estimate + " far below " + truth);
  }

  private static double trueCondition(SparseSymmetric a) {
    int n = a.size();
    double[][] full = a.toDense();
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = 1 / Math.sqrt(full[i][i]);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        full[i][j] *= scale[i] * scale[j];
      }
    }
    Array2DRowRealMatrix scaled = new Array2DRowRealMatrix(full);
    // The 1-norm of a symmetric matrix is its largest row sum.
    double inverse =
        new CholeskyDecomposition(scaled, 1e-9, 1e-300).getSolver().getInverse().getNorm();
    return inverse * scaled.getNorm();
  }
}
