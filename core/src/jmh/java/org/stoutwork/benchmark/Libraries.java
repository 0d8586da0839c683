package org.stoutwork.benchmark;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.stoutwork.linear.SparseSymmetric;

/** The same systems as other libraries want them. */
final class Libraries {
  private Libraries() {}

  static Array2DRowRealMatrix dense(SparseSymmetric matrix) {
    return new Array2DRowRealMatrix(matrix.toDense(), false);
  }

  /** Sparse Cholesky of EJML, structure locked, with our own order of elimination. */
  static final class Ejml {
    private final DMatrixSparseCSC matrix;
    private final int[] order;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;
    private final DMatrixRMaj b;
    private final DMatrixRMaj x;

    Ejml(SparseSymmetric a, int[] order) {
      int n = a.size();
      this.order = order;
      int[] place = new int[n];
      for (int k = 0; k < n; k++) {
        place[order[k]] = k;
      }
      DMatrixSparseTriplet triplets = new DMatrixSparseTriplet(n, n, 2 * a.entries());
      a.forEach(
          (i, j, v) -> {
            triplets.addItem(place[i], place[j], v);
            if (i != j) {
              triplets.addItem(place[j], place[i], v);
            }
          });
      matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
      matrix.sortIndices(null);
      solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
      b = new DMatrixRMaj(n, 1);
      x = new DMatrixRMaj(n, 1);
      factor();
      solver.setStructureLocked(true);
    }

    void factor() {
      if (!solver.setA(matrix)) {
        throw new IllegalStateException("EJML finds the matrix not positive definite");
      }
    }

    double[] solve(double[] side) {
      for (int k = 0; k < order.length; k++) {
        b.data[k] = side[order[k]];
      }
      solver.solve(b, x);
      double[] answer = new double[side.length];
      for (int k = 0; k < order.length; k++) {
        answer[order[k]] = x.data[k];
      }
      return answer;
    }
  }
}
