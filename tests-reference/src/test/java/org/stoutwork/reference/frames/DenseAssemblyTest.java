package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Material;
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
    RealMatrix t = rotation(axis);
    RealMatrix own = local(axis.length(), model.sectionOf(member), model.materialOf(member));
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

  private static RealMatrix rotation(Vec3 axis) {
    double l = axis.length();
    double[] x = {axis.x() / l, axis.y() / l, axis.z() / l};
    double[] y = {-x[1], x[0], 0};
    double flat = Math.hypot(x[0], x[1]);
    y = flat < 1e-6 ? new double[] {0, 1, 0} : new double[] {y[0] / flat, y[1] / flat, 0};
    double[] z = {x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]};
    RealMatrix t = new Array2DRowRealMatrix(12, 12);
    for (int block = 0; block < 4; block++) {
      for (int j = 0; j < 3; j++) {
        t.setEntry(3 * block, 3 * block + j, x[j]);
        t.setEntry(3 * block + 1, 3 * block + j, y[j]);
        t.setEntry(3 * block + 2, 3 * block + j, z[j]);
      }
    }
    return t;
  }

  private static RealMatrix local(double l, CrossSection s, Material m) {
    RealMatrix k = new Array2DRowRealMatrix(12, 12);
    bar(k, 0, m.e() * s.area() / l);
    bar(k, 3, m.g() * s.j() / l);
    bend(k, new int[] {1, 5, 7, 11}, 1, m.e() * s.iz(), m.g() * s.asy(), l);
    bend(k, new int[] {2, 4, 8, 10}, -1, m.e() * s.iy(), m.g() * s.asz(), l);
    return k;
  }

  private static void bar(RealMatrix k, int i, double stiffness) {
    k.addToEntry(i, i, stiffness);
    k.addToEntry(i + 6, i + 6, stiffness);
    k.addToEntry(i, i + 6, -stiffness);
    k.addToEntry(i + 6, i, -stiffness);
  }

  private static void bend(RealMatrix k, int[] p, int sign, double ei, double ga, double l) {
    double phi = ga == 0 ? 0 : 12 * ei / (ga * l * l);
    double c = ei / (l * l * l * (1 + phi));
    double[][] b = {
      {12, sign * 6 * l, -12, sign * 6 * l},
      {sign * 6 * l, (4 + phi) * l * l, -sign * 6 * l, (2 - phi) * l * l},
      {-12, -sign * 6 * l, 12, -sign * 6 * l},
      {sign * 6 * l, (2 - phi) * l * l, -sign * 6 * l, (4 + phi) * l * l}
    };
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        k.addToEntry(p[i], p[j], c * b[i][j]);
      }
    }
  }
}
