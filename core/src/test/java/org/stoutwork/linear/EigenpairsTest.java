package org.stoutwork.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

class EigenpairsTest {
  @Property(tries = 15)
  void the_largest_eigenvalues_are_those_of_the_dense_problem(@ForAll long seed) {
    Random random = new Random(seed);
    int blocks = 8;
    SparseSymmetric k = RandomMatrices.frameLike(random, blocks, 0.5);
    SparseSymmetric b =
        RandomMatrices.frameLike(random, blocks, 0.1)
            .plus(-0.7, RandomMatrices.frameLike(random, blocks, 0.1));
    LdlFactor factor =
        (LdlFactor) LdlFactor.of(k, MinimumDegree.order(k, RandomMatrices.groups(blocks)));
    List<Eigenpairs.Pair> found = Eigenpairs.largest(k, factor, b, 5);
    double[] dense = dense(k, b);
    for (int i = 0; i < 5; i++) {
      double expected = dense[dense.length - 1 - i];
      assertEquals(expected, found.get(i).value(), 1e-8 * dense[dense.length - 1]);
      double[] x = found.get(i).vector();
      double[] kx = k.times(x);
      double[] bx = b.times(x);
      for (int r = 0; r < x.length; r++) {
        assertEquals(expected * kx[r], bx[r], 1e-3 * dense[dense.length - 1]);
      }
    }
  }

  private static double[] dense(SparseSymmetric k, SparseSymmetric b) {
    EigenDecomposition e = new EigenDecomposition(new Array2DRowRealMatrix(k.toDense()));
    RealMatrix root = e.getSquareRoot();
    RealMatrix inverse = new LUDecomposition(root).getSolver().getInverse();
    RealMatrix a = inverse.multiply(new Array2DRowRealMatrix(b.toDense())).multiply(inverse);
    RealMatrix symmetric = a.add(a.transpose()).scalarMultiply(0.5);
    double[] values = new EigenDecomposition(symmetric).getRealEigenvalues();
    Arrays.sort(values);
    return values;
  }
}
