package org.stoutwork.reference.frames;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/**
 * A frame with rolled members, rigid arms, end springs, releases, supports on springs and
 * settlements as one dense system: every member end has unknowns of its own, and whatever is rigid
 * is a condition with a multiplier of Lagrange. Nothing is condensed or eliminated. Solved by the
 * LU decomposition of Apache Commons Math 3.6.1.
 */
final class DenseFrame {
  /** Size of the conditions' coefficients, near that of the stiffness for good pivots. */
  private static final double SCALE = 1e4;

  private final FrameModel model;
  private final List<String> nodes;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private final RealMatrix stiffness;

  DenseFrame(FrameModel model) {
    this.model = model;
    this.nodes = new ArrayList<>(model.nodes().keySet());
    int n = 6 * nodes.size() + 12 * model.members().size();
    this.stiffness = new Array2DRowRealMatrix(n, n);
    int first = 6 * nodes.size();
    for (Member member : model.members().values()) {
      beam(member, first);
      first += 12;
    }
    model.supports().forEach((node, held) -> held.forEach((way, how) -> support(node, way, how)));
  }

  private void beam(Member member, int first) {
    Vec3 start = model.nodes().get(member.from()).plus(member.start().offset());
    Vec3 axis = model.nodes().get(member.to()).plus(member.end().offset()).minus(start);
    RealMatrix turn = DenseBeam.rotation(axis, member.roll());
    RealMatrix own =
        DenseBeam.local(axis.length(), model.sectionOf(member), model.materialOf(member));
    for (int i = 0; i < 12; i++) {
      for (int j = 0; j < 12; j++) {
        stiffness.addToEntry(first + i, first + j, own.getEntry(i, j));
      }
    }
    end(member.from(), member.start(), turn, first);
    end(member.to(), member.end(), turn, first + 6);
  }

  private void end(String node, MemberEnd end, RealMatrix turn, int first) {
    for (Direction way : Direction.values()) {
      EndCondition condition = end.in(way);
      if (condition instanceof EndCondition.Free) {
        continue;
      }
      double[] gap = gap(node, end.offset(), turn, way.index(), first + way.index());
      if (condition instanceof EndCondition.Elastic spring) {
        spring(gap, spring.stiffness());
      } else {
        hold(gap, 0);
      }
    }
  }

  /** What the member end moves in a local direction more than the tip of its node's rigid arm. */
  private double[] gap(String node, Vec3 arm, RealMatrix turn, int way, int own) {
    double[] row = new double[stiffness.getColumnDimension()];
    row[own] = 1;
    int at = 6 * nodes.indexOf(node);
    int i = way % 3;
    Vec3 axis = new Vec3(turn.getEntry(i, 0), turn.getEntry(i, 1), turn.getEntry(i, 2));
    if (way < 3) {
      put(row, at, axis);
      put(row, at + 3, arm.cross(axis));
    } else {
      put(row, at + 3, axis);
    }
    return row;
  }

  private static void put(double[] row, int at, Vec3 v) {
    row[at] = -v.x();
    row[at + 1] = -v.y();
    row[at + 2] = -v.z();
  }

  private void support(String node, Direction way, Restraint how) {
    double[] row = new double[stiffness.getColumnDimension()];
    row[6 * nodes.indexOf(node) + way.index()] = 1;
    if (how instanceof Restraint.Elastic spring) {
      spring(row, spring.stiffness());
    } else if (how instanceof Restraint.Prescribed moved) {
      hold(row, moved.displacement());
    } else {
      hold(row, 0);
    }
  }

  private void spring(double[] row, double k) {
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length && row[i] != 0; j++) {
        stiffness.addToEntry(i, j, k * row[i] * row[j]);
      }
    }
  }

  private void hold(double[] row, double value) {
    rows.add(row);
    values.add(value);
  }

  /** Displacements of the nodes in order, six each, under six forces on every node. */
  double[] solve(double[] forces) {
    int n = stiffness.getColumnDimension();
    int all = n + rows.size();
    RealMatrix whole = new Array2DRowRealMatrix(all, all);
    whole.setSubMatrix(stiffness.getData(), 0, 0);
    ArrayRealVector side = new ArrayRealVector(all);
    for (int i = 0; i < forces.length; i++) {
      side.setEntry(i, forces[i]);
    }
    for (int c = 0; c < rows.size(); c++) {
      for (int j = 0; j < n; j++) {
        whole.setEntry(n + c, j, SCALE * rows.get(c)[j]);
        whole.setEntry(j, n + c, SCALE * rows.get(c)[j]);
      }
      side.setEntry(n + c, SCALE * values.get(c));
    }
    return new LUDecomposition(whole)
        .getSolver()
        .solve(side)
        .getSubVector(0, 6 * nodes.size())
        .toArray();
  }
}
