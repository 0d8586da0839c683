package org.stoutwork.benchmark;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.stoutwork.linear.LdlFactor;
import org.stoutwork.linear.LdlPattern;
import org.stoutwork.linear.LdlRepeat;
import org.stoutwork.linear.MinimumDegree;
import org.stoutwork.linear.SparseSymmetric;

/**
 * Prints the table of ratios of the analysis, all contestants of one row interleaved in this one
 * virtual machine, by processor time. Arguments: the rows wanted, all when none is named. A wrong
 * answer ends the run.
 */
public final class AnalysisRatios {
  private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  private final Set<String> wanted;

  private AnalysisRatios(String[] rows) {
    wanted = new TreeSet<>(Arrays.asList(rows));
  }

  /** Runs the rows. */
  public static void main(String[] rows) {
    new AnalysisRatios(rows).run();
  }

  private boolean wants(String id) {
    return wanted.isEmpty() || wanted.contains(id);
  }

  private void run() {
    calibration();
    OUT.println(Row.head());
    SparseSymmetric a20 = matrix(20);
    one(new Row("P1", "A20: factor + 1 solve / dense LU", 15, 30, 60), a20, false);
    one(new Row("P1b", "A12: factor + 1 solve / dense LU", 5, 10, 20), matrix(12), false);
    SparseSymmetric b = Cases.prepared(Cases.pieces(6)).system().matrix();
    one(new Row("P2", "B: factor + 1 solve / dense LU", 500, 1000, 2500), b, false);
    one(new Row("P2c", "B: factor + 1 solve / dense Cholesky", 120, 240, 600), b, true);
    factorOnly(new Row("P4c", "A20: factor / sparse Cholesky", 0.9, 1.8, 3), a20);
    SparseSymmetric c1 = Cases.withTop(24, 8).system().matrix();
    factorOnly(new Row("P4b", "C1: factor / sparse Cholesky", 1.2, 2, 5), c1);
    surfaces(new Row("P5b", "C1: factor + 24 surfaces / sparse, 225 solves", 8, 15, 40), c1, 225);
    SweepRows.run(this::wants, OUT);
    CheckRows.run(this::wants, OUT);
    if (wants("P8d")) {
      CheckBench.print(OUT);
    }
    if (wants("P4") || wants("P5") || wants("P5c")) {
      SparseSymmetric c2 = Cases.withTop(60, 20).system().matrix();
      factorOnly(new Row("P4", "C2: factor / sparse Cholesky", 1.5, 3, 8), c2);
      surfaces(
          new Row("P5", "C2: factor + 24 surfaces / sparse, 1281 solves", 40, 80, 250), c2, 1281);
      everywhere(
          new Row("P5c", "C2: factor + 1281 positions / sparse, 1281 solves", 3, 5, 12), c2, 1281);
    }
    positions(new Row("P3", "C1: factor + 225 positions / dense LU", 200, 400, 900), c1);
  }

  private static SparseSymmetric matrix(int nodes) {
    return Cases.prepared(nodes == 12 ? Cases.a12() : Cases.a20()).system().matrix();
  }

  private static void calibration() {
    Array2DRowRealMatrix dense = Libraries.dense(matrix(20));
    List<Contest.Times> t =
        Contest.run(
            11,
            List.of(
                new Contest.Contestant(
                    "dense LU of A20", () -> new LUDecomposition(dense).getDeterminant())));
    OUT.println(
        String.format(
            Locale.ROOT,
            "calibration: %s; JDK %s%s",
            t.get(0).print(),
            Runtime.version(),
            t.get(0).median() > 600_000 ? "; noisy machine" : ""));
  }

  private static double[] side(SparseSymmetric a) {
    return Cases.positions(a, 3, 1)[0];
  }

  private static LdlPattern pattern(SparseSymmetric a) {
    return LdlPattern.of(a, MinimumDegree.order(a, Cases.nodes(a)));
  }

  private void one(Row row, SparseSymmetric a, boolean cholesky) {
    if (!wants(row.id())) {
      return;
    }
    double[] f = side(a);
    Array2DRowRealMatrix dense = Libraries.dense(a);
    ArrayRealVector right = new ArrayRealVector(f);
    LdlRepeat own = new LdlRepeat(pattern(a));
    double[] x = new double[f.length];
    Contest.Work baseline =
        () -> {
          DecompositionSolver solver =
              cholesky
                  ? new CholeskyDecomposition(dense, 1e-9, 1e-300).getSolver()
                  : new LUDecomposition(dense).getSolver();
          return solver.solve(right).getEntry(2);
        };
    Contest.Work ours =
        () -> {
          own.factor(a);
          own.solve(f, x);
          return x[2];
        };
    close(baseline.run(), ours.run(), Math.abs(x[2]));
    Verify.residual(a, x, f);
    print(row, a.size() > 300 ? 11 : 15, baseline, ours);
  }

  private void factorOnly(Row row, SparseSymmetric a) {
    if (!wants(row.id())) {
      return;
    }
    LdlPattern pattern = pattern(a);
    LdlRepeat own = new LdlRepeat(pattern);
    Libraries.Ejml ejml = new Libraries.Ejml(a, pattern.order());
    double[] f = side(a);
    double[] x = new double[f.length];
    own.factor(a);
    own.solve(f, x);
    Verify.residual(a, x, f);
    Verify.same(ejml.solve(f), x);
    print(
        row,
        15,
        () -> {
          ejml.factor();
          return 1;
        },
        () -> own.factor(a).isEmpty() ? 1 : Double.NaN);
  }

  /** Twenty-four responses, each solved once and read at every position. */
  private void surfaces(Row row, SparseSymmetric a, int count) {
    if (!wants(row.id())) {
      return;
    }
    LdlPattern pattern = pattern(a);
    Libraries.Ejml ejml = new Libraries.Ejml(a, pattern.order());
    double[][] places = Cases.positions(a, 20, count);
    double[][] causes = new double[24][a.size()];
    for (int r = 0; r < causes.length; r++) {
      causes[r][(r * 5) % 120] = 1;
    }
    double[][] table = new double[causes.length][count];
    Contest.Work ours =
        () -> {
          double[][] motion = ((LdlFactor) LdlFactor.of(a, pattern)).solveAll(causes);
          for (int r = 0; r < motion.length; r++) {
            for (int p = 0; p < count; p++) {
              int unknown = 6 * (20 + p) + 2;
              table[r][p] = motion[r][unknown] * places[p][unknown];
            }
          }
          return table[3][7];
        };
    ours.run();
    ejml.factor();
    for (int p = 0; p < count; p += Math.max(1, count / 100)) {
      double[] u = ejml.solve(places[p]);
      double size = Arrays.stream(u).map(Math::abs).max().orElseThrow();
      for (int r = 0; r < causes.length; r++) {
        close(u[(r * 5) % 120], table[r][p], size);
      }
    }
    print(row, count > 300 ? 5 : 11, allOf(ejml, places), ours);
  }

  private static Contest.Work allOf(Libraries.Ejml ejml, double[][] places) {
    return () -> {
      ejml.factor();
      double sum = 0;
      for (double[] place : places) {
        sum += ejml.solve(place)[2];
      }
      return sum;
    };
  }

  private void everywhere(Row row, SparseSymmetric a, int count) {
    if (!wants(row.id())) {
      return;
    }
    LdlPattern pattern = pattern(a);
    Libraries.Ejml ejml = new Libraries.Ejml(a, pattern.order());
    double[][] places = Cases.positions(a, 20, count);
    Verify.same(ejml.solve(places[5]), ((LdlFactor) LdlFactor.of(a, pattern)).solveAll(places)[5]);
    print(
        row,
        5,
        allOf(ejml, places),
        () -> ((LdlFactor) LdlFactor.of(a, pattern)).solveAll(places)[5][2]);
  }

  private void positions(Row row, SparseSymmetric a) {
    if (!wants(row.id())) {
      return;
    }
    LdlPattern pattern = pattern(a);
    double[][] places = Cases.positions(a, 20, 225);
    Array2DRowRealMatrix dense = Libraries.dense(a);
    Array2DRowRealMatrix sides = new Array2DRowRealMatrix(a.size(), 64);
    Contest.Work baseline =
        () -> {
          DecompositionSolver solver = new LUDecomposition(dense).getSolver();
          double sum = 0;
          for (int from = 0; from < places.length; from += 64) {
            for (int c = 0; c < 64; c++) {
              sides.setColumn(c, places[Math.min(places.length - 1, from + c)]);
            }
            sum += solver.solve(sides).getEntry(2, 0);
          }
          return sum;
        };
    double[][] answers = ((LdlFactor) LdlFactor.of(a, pattern)).solveAll(places);
    for (int p = 0; p < places.length; p++) {
      Verify.residual(a, answers[p], places[p]);
    }
    print(row, 3, baseline, () -> ((LdlFactor) LdlFactor.of(a, pattern)).solveAll(places)[3][2]);
  }

  private static void close(double expected, double found, double size) {
    if (!(Math.abs(expected - found) <= 1e-9 * size)) {
      throw new IllegalStateException("expected " + expected + ", found " + found);
    }
  }

  private static void print(Row row, int rounds, Contest.Work baseline, Contest.Work ours) {
    List<Contest.Times> times =
        Contest.run(
            rounds,
            List.of(
                new Contest.Contestant("baseline", baseline), new Contest.Contestant("own", ours)));
    OUT.println(row.line(times.get(0), times.get(1)));
  }
}
