package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;

/**
 * A bench base assembled once more, densely, from the textbook stiffness of the Timoshenko beam (J.
 * S. Przemieniecki, <em>Theory of Matrix Structural Analysis</em>, 1968, section 5.6, from memory)
 * and solved by the LU decomposition of Apache Commons Math 3.6.1.
 */
class DenseAssemblyTest {
  @Test
  void the_rigid_bench_base_moves_as_the_dense_assembly_says() {
    FrameModel model = FrameFile.read("frames/F09_space_bench_base_rigid.json").model();
    List<String> nodes = new ArrayList<>(model.nodes().keySet());
    int n = 6 * nodes.size();
    RealMatrix k = new Array2DRowRealMatrix(n, n);
    for (Member member : model.members().values()) {
      add(k, model, member, nodes.indexOf(member.from()), nodes.indexOf(member.to()));
    }
    model
        .supports()
        .forEach(
            (node, held) ->
                held.keySet().forEach(d -> hold(k, 6 * nodes.indexOf(node) + d.index())));
    ArrayRealVector f = new ArrayRealVector(n);
    double[] load = {130, -70, -410, 9000, 4000, -25000};
    int at = 6 * nodes.indexOf("FR2");
    for (int i = 0; i < 6; i++) {
      f.setEntry(at + i, load[i]);
    }
    double[] u = new LUDecomposition(k).getSolver().solve(f).toArray();
    FrameResult result =
        FrameSolver.prepare(model)
            .prepared()
            .solve(
                LoadCase.of("corner", new Load.OnNode("FR2", Vec3.of(load, 0), Vec3.of(load, 3))))
            .result();
    for (int v = 0; v < nodes.size(); v++) {
      double[] six = result.displacement(nodes.get(v));
      for (int i = 0; i < 6; i++) {
        assertEquals(u[6 * v + i], six[i], i < 3 ? 1e-9 : 1e-12, nodes.get(v) + " " + i);
      }
    }
  }

  private static void hold(RealMatrix k, int i) {
    for (int j = 0; j < k.getColumnDimension(); j++) {
      k.setEntry(i, j, 0);
      k.setEntry(j, i, 0);
    }
    k.setEntry(i, i, 1);
  }

  private static void add(RealMatrix k, FrameModel model, Member member, int from, int to) {
    Vec3 axis = model.nodes().get(member.to()).minus(model.nodes().get(member.from()));
    RealMatrix t = DenseBeam.rotation(axis, 0);
    RealMatrix own =
        DenseBeam.local(axis.length(), model.sectionOf(member), model.materialOf(member));
    RealMatrix global = t.transpose().multiply(own).multiply(t);
    for (int i = 0; i < 12; i++) {
      for (int j = 0; j < 12; j++) {
        k.addToEntry(place(from, to, i), place(from, to, j), global.getEntry(i, j));
      }
    }
  }

  private static int place(int from, int to, int i) {
    return i < 6 ? 6 * from + i : 6 * to + i - 6;
  }
}
