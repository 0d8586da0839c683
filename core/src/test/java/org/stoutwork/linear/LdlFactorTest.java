package org.stoutwork.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
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
