package org.stoutwork.benchmark;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.linear.SparseSymmetric;
import org.stoutwork.quantity.Length;
import org.stoutwork.result.BenchResult;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignTables;

/**
 * The whole check of one bench, workings and all: four legs, an upper and a lower rail in each end
 * frame, an upper and a lower long rail on each side, two stretchers between the lower rails. As
 * main class it prints the row of ratios against one dense solution of the same frame.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseParallelGC"})
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
public class CheckBench {
  /** So much code takes longer to be compiled than the contest waits. */
  private static final int WARM = 150;

  private final BenchCheck check = BenchCheck.load();
  private final Bench bench = complete(sketch());
  private final double expected = worst(check.run(bench));

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static BenchSketch sketch() {
    BenchSketch sketch =
        BenchSketch.named("bench with rails all round")
            .height(mm(862))
            .wood("beech-european")
            .top(t -> t.length(mm(1840)).width(mm(655)).thickness(mm(68)))
            .everyEndFrame(
                f ->
                    f.legs(l -> l.along(mm(94)).across(mm(81)).frontInset(mm(17)).backInset(mm(29)))
                        .topRail(r -> r.depth(mm(106)).thickness(mm(45)))
                        .bottomRail(r -> r.depth(mm(91)).thickness(mm(42)).bottomEdgeAt(mm(115))))
            .endFrame(f -> f.at(mm(285)))
            .endFrame(f -> f.at(mm(1570)));
    for (StretcherLine side : List.of(StretcherLine.FRONT, StretcherLine.BACK)) {
      long_(sketch, side, "upper", 118, 610);
      long_(sketch, side, "lower", 127, 260);
    }
    return sketch;
  }

  private static void long_(
      BenchSketch sketch, StretcherLine side, String name, double depth, double centre) {
    sketch.stretcher(
        s ->
            s.name(name + " " + side.words() + " rail")
                .line(side)
                .depth(mm(depth))
                .thickness(mm(44))
                .centreAt(mm(centre)));
  }

  private static Bench complete(BenchSketch sketch) {
    try {
      return sketch.complete(WoodCatalogue.load());
    } catch (UnsoundBench e) {
      throw new IllegalStateException(e);
    }
  }

  private static double worst(BenchResult result) {
    if (!result.selfCheck().holds() || result.checked().size() < 40) {
      throw new IllegalStateException("wrong answer: " + result.selfCheck());
    }
    return result.worst().utilisation();
  }

  /** Everything from the complete bench to the result. */
  @Benchmark
  public double ordinaryBench() {
    double worst = worst(check.run(bench));
    if (worst != expected) {
      throw new IllegalStateException("wrong answer: " + worst + ", not " + expected);
    }
    return worst;
  }

  /** Prints the row. */
  static void print(PrintStream out) {
    CheckBench own = new CheckBench();
    for (int i = 0; i < WARM; i++) {
      own.ordinaryBench();
    }
    Timbers timbers = Timbers.of(own.bench, DesignTables.load());
    BenchModel model =
        BenchModel.of(own.bench, timbers::get, JointLevel.MEAN, FloorContact.MAY_LIFT);
    SparseSymmetric a = FrameSolver.prepare(model.frame()).prepared().system().matrix();
    Array2DRowRealMatrix dense = Libraries.dense(a);
    ArrayRealVector side = new ArrayRealVector(Cases.positions(a, 3, 1)[0]);
    List<Contest.Times> times =
        Contest.run(
            15,
            List.of(
                new Contest.Contestant(
                    "dense", () -> new LUDecomposition(dense).getSolver().solve(side).getEntry(2)),
                new Contest.Contestant("check", own::ordinaryBench)));
    String what =
        "whole check of a bench (%d members, %d unknowns) / dense LU, 1 solve, of its frame"
            .formatted(model.frame().members().size(), a.size());
    out.println(new Row("P8d", what, 0.5, 1, 3).line(times.get(0), times.get(1)));
  }

  /** Prints the row by itself. */
  public static void main(String[] none) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println(Row.head());
    print(out);
  }
}
