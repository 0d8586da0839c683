package org.stoutwork.benchmark;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.Outcome;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.linear.SparseSymmetric;

/**
 * A frame made anew with other numbers, 64 places of a load, the forces at both ends of every
 * member, their envelopes and a rule of strength: by the interface that any program would use, all
 * self-checks included, against one dense solution of the same frame.
 */
final class CheckRows {
  private static final int CASES = 64;
  private static final double STRENGTH = 24;

  private final FrameModel model;
  private final PreparedFrame frame;
  private final List<LoadCase> cases = new ArrayList<>();

  private CheckRows(FrameModel model) {
    this.model = model;
    this.frame = Cases.prepared(model);
    List<String> tops = model.members().keySet().stream().filter(n -> n.startsWith("top")).toList();
    for (int c = 0; c < CASES; c++) {
      String member = tops.get(c % tops.size());
      double at = length(model.members().get(member)) * (0.03 + 0.94 * c / CASES);
      cases.add(LoadCase.of("place " + c, Load.point(member, at, 0, 0, -900 - c)));
    }
  }

  private double length(Member member) {
    Vec3 from = model.nodes().get(member.from()).plus(member.start().offset());
    return model.nodes().get(member.to()).plus(member.end().offset()).minus(from).length();
  }

  static void run(Predicate<String> wants, PrintStream out) {
    if (wants.test("P8")) {
      CheckRows small = new CheckRows(Cases.a20());
      small.print(new Row("P8", "A20: 64 places checked / dense LU, 1 solve", 0.5, 1, 3.3), out);
    }
    if (wants.test("P8b")) {
      CheckRows large = new CheckRows(Cases.pieces(6));
      large.print(new Row("P8b", "B: 64 places checked / dense LU, 1 solve", 25, 50, 300), out);
    }
  }

  private void print(Row row, PrintStream out) {
    verify();
    SparseSymmetric a = frame.system().matrix();
    Array2DRowRealMatrix dense = Libraries.dense(a);
    ArrayRealVector side = new ArrayRealVector(Cases.positions(a, 3, 1)[0]);
    List<Contest.Times> times =
        Contest.run(
            11,
            List.of(
                new Contest.Contestant(
                    "dense", () -> new LUDecomposition(dense).getSolver().solve(side).getEntry(2)),
                new Contest.Contestant("own", this::worst)));
    out.println(row.line(times.get(0), times.get(1)));
  }

  private void verify() {
    List<Outcome> all = frame.solveAll(cases);
    for (int c = 0; c < CASES; c++) {
      FrameResult side = all.get(c).result();
      double[] alone = frame.solve(cases.get(c)).result().displacement("C2");
      for (int i = 0; i < 6; i++) {
        if (side.displacement("C2")[i] != alone[i] || side.equilibriumError() > 1e-9) {
          throw new IllegalStateException("place " + c + " is answered wrong");
        }
      }
    }
  }

  /** The greatest utilisation of any member in any case. */
  private double worst() {
    PreparedFrame anew = frame.withMembers(model.members()).prepared();
    List<Outcome> all = anew.solveAll(cases);
    double worst = 0;
    for (Member member : model.members().values()) {
      double[] envelope = new double[6];
      for (Outcome outcome : all) {
        MemberResult result = outcome.result().member(member.name());
        widen(envelope, result.start());
        widen(envelope, result.end());
      }
      worst = Math.max(worst, utilisation(envelope, model.sectionOf(member)));
    }
    return worst;
  }

  private static void widen(double[] envelope, double[] forces) {
    for (int i = 0; i < 6; i++) {
      envelope[i] = Math.max(envelope[i], Math.abs(forces[i]));
    }
  }

  private static double utilisation(double[] e, CrossSection s) {
    double h = Math.sqrt(12 * s.iy() / s.area());
    double b = s.area() / h;
    double bending = e[4] * h / 2 / s.iy() + e[5] * b / 2 / s.iz();
    double shear = 1.5 * Math.hypot(e[1], e[2]) / s.area();
    return Math.max((e[0] / s.area() + bending) / STRENGTH, shear / (STRENGTH / 8));
  }
}
