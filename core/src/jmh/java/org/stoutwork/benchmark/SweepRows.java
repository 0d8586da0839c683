package org.stoutwork.benchmark;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.JointSpring;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.analysis.solve.Response;
import org.stoutwork.analysis.solve.SpringSweep;
import org.stoutwork.analysis.solve.StiffnessSweep;
import org.stoutwork.linear.LdlLanes;

/**
 * Sweeps of joint springs, one variant a time, against a dense factorisation a variant. The
 * baseline is spared assembling: it factorises a copy of one matrix of 120 unknowns.
 */
final class SweepRows {
  private static final int VARIANTS = 512;

  /** A sweep with its variants. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Prepared(
      PreparedFrame frame, List<JointSpring> springs, SpringSweep sweep, double[][] constants) {}

  private SweepRows() {}

  static void run(Predicate<String> wants, PrintStream out) {
    full(wants, out);
    row(wants, out, new Row("P7", "J8: a variant / dense LU + 3 solves", 300, 600, 2000), 8);
    row(wants, out, new Row("P7b", "J16: a variant / dense LU + 3 solves", 80, 160, 500), 16);
    row(wants, out, new Row("J24", "J24: a variant / dense LU + 3 solves", 0, 0, 1e9), 24);
  }

  private static void row(Predicate<String> wants, PrintStream out, Row row, int rank) {
    if (!wants.test(row.id())) {
      return;
    }
    Prepared prepared = prepared(rank);
    check(prepared);
    Contest.Work baseline = dense(prepared.frame());
    SpringSweep.Workspace w = prepared.sweep().workspace();
    int[] next = new int[1];
    Contest.Work ours =
        () -> {
          prepared.sweep().solve(prepared.constants()[next[0]++ & (VARIANTS - 1)], w);
          return w.value(0, 0) + w.value(5, 2);
        };
    List<Contest.Times> times =
        Contest.run(
            15,
            List.of(
                new Contest.Contestant("baseline", baseline), new Contest.Contestant("own", ours)));
    out.println(row.line(times.get(0), times.get(1)));
  }

  private static Contest.Work dense(PreparedFrame frame) {
    Array2DRowRealMatrix dense = Libraries.dense(frame.system().matrix());
    ArrayRealVector[] sides = new ArrayRealVector[3];
    for (int c = 0; c < 3; c++) {
      sides[c] = new ArrayRealVector(Cases.positions(frame.system().matrix(), c, 1)[0]);
    }
    return () -> {
      DecompositionSolver solver = new LUDecomposition(dense.copy()).getSolver();
      double sum = 0;
      for (ArrayRealVector side : sides) {
        sum += solver.solve(side).getEntry(2);
      }
      return sum;
    };
  }

  private static void full(Predicate<String> wants, PrintStream out) {
    if (!wants.test("P6") && !wants.test("P6b")) {
      return;
    }
    FullChange change = new FullChange();
    change.check();
    if (wants.test("P6")) {
      StiffnessSweep.Workspace w = change.sweep().workspace();
      int parts = change.sweep().parts().size();
      long[] next = new long[1];
      List<Contest.Times> times =
          Contest.run(
              15,
              List.of(
                  new Contest.Contestant("baseline", dense(change.frame())),
                  new Contest.Contestant(
                      "own",
                      () -> {
                        change.batch(next[0] += LdlLanes.WIDTH, w, parts);
                        return w.value(3, 1, 5);
                      })));
      Row row = new Row("P6", "S20: a variant / dense LU + 3 solves", 40, 80, 200);
      out.println(row.line(times.get(0), times.get(1).over(LdlLanes.WIDTH)));
    }
    if (wants.test("P6b")) {
      int batches = 400;
      if (!Arrays.equals(change.run(batches, 1), change.run(batches, 2))) {
        throw new IllegalStateException("two threads give other numbers than one");
      }
      List<Contest.Times> times =
          Contest.run(
              11,
              List.of(
                  new Contest.Contestant("baseline", () -> change.run(batches, 1)[9]),
                  new Contest.Contestant("own", () -> change.run(batches, 2)[9])));
      Row row = new Row("P6b", "S20: two threads / one thread", 1.5, 1.8, 1.95);
      int variants = batches * LdlLanes.WIDTH;
      out.println(row.line(times.get(0).over(variants), times.get(1).over(variants)));
    }
  }

  static Prepared prepared(int rank) {
    FrameModel model = Cases.a20();
    PreparedFrame frame = Cases.prepared(model);
    List<JointSpring> springs = new ArrayList<>();
    Direction[] turns = {Direction.RZ, Direction.RY, Direction.UX};
    for (int i = 0; i < rank; i++) {
      String rail = "rail" + "ABCD".charAt(i % 4) + ".0";
      JointSpring.End end = i / 4 % 2 == 0 ? JointSpring.End.START : JointSpring.End.END;
      springs.add(new JointSpring(rail, end, turns[i / 8]));
    }
    List<LoadCase> cases =
        List.of(
            LoadCase.of("down", Load.node("A2", 20, 30, -900), Load.line("topC.0", 0, 0, -0.7)),
            LoadCase.of("rack", Load.node("B2", 410, 12, 0), Load.point("railA.0", 300, 0, 0, -55)),
            LoadCase.of("push", Load.node("C2", 15, 380, -9)));
    List<Response> responses =
        List.of(
            new Response.Displacement("C2", Direction.UX),
            new Response.Displacement("A2", Direction.UZ),
            new Response.Reaction("B0", Direction.UZ),
            new Response.Internal("railA.0", 0, MemberResult.Force.MZ),
            new Response.Internal("railB.0", 0, MemberResult.Force.MY),
            new Response.Internal("highC.0", 0, MemberResult.Force.MY));
    double[][] constants = new double[VARIANTS][rank];
    Random random = new Random(8);
    for (double[] k : constants) {
      for (int i = 0; i < rank; i++) {
        double middle = springs.get(i).direction().isRotation() ? 3e7 : 2e4;
        k[i] = middle * Math.exp(0.6 * random.nextGaussian());
      }
    }
    return new Prepared(
        frame, springs, SpringSweep.of(frame, springs, cases, responses), constants);
  }

  /** A hundred variants against frames factorised afresh. */
  private static void check(Prepared p) {
    SpringSweep.Workspace w = p.sweep().workspace();
    for (int v = 0; v < 100; v++) {
      double[] k = p.constants()[v];
      if (p.sweep().solve(k, w) != SpringSweep.State.UPDATED) {
        throw new IllegalStateException("variant " + v + " was not updated");
      }
      PreparedFrame fresh = p.frame().withMembers(members(p, k)).prepared();
      FrameResult result = fresh.solve(LoadCase.of("push", Load.node("C2", 15, 380, -9))).result();
      double[] expected = {
        result.displacement("C2")[0],
        result.displacement("A2")[2],
        result.reaction("B0")[2],
        result.member("railA.0").along(MemberResult.Force.MZ).at(0),
        result.member("railB.0").along(MemberResult.Force.MY).at(0),
        result.member("highC.0").along(MemberResult.Force.MY).at(0)
      };
      double[] size = {10, 10, 380, 1e5, 1e5, 1e5};
      for (int o = 0; o < expected.length; o++) {
        if (!(Math.abs(expected[o] - w.value(o, 2)) <= 1e-9 * size[o])) {
          throw new IllegalStateException(
              "variant " + v + ": expected " + expected[o] + ", found " + w.value(o, 2));
        }
      }
    }
  }

  private static Map<String, Member> members(Prepared p, double[] k) {
    Map<String, Member> changed = new LinkedHashMap<>(p.frame().model().members());
    for (int i = 0; i < k.length; i++) {
      JointSpring s = p.springs().get(i);
      Member m = changed.get(s.member());
      boolean end = s.end() == JointSpring.End.END;
      MemberEnd with = (end ? m.end() : m.start()).spring(s.direction(), k[i]);
      changed.put(
          m.name(),
          new Member(
              m.name(),
              m.from(),
              m.to(),
              m.section(),
              m.material(),
              m.roll(),
              end ? m.start() : with,
              end ? with : m.end()));
    }
    return changed;
  }
}
