package org.stoutwork.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stoutwork.linear.LdlPattern;
import org.stoutwork.linear.LdlRepeat;
import org.stoutwork.linear.MinimumDegree;
import org.stoutwork.linear.SparseSymmetric;

/** How cost grows as members are cut into more pieces: 120 k' unknowns, up to 4632. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseParallelGC"})
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 7, time = 1)
public class GrowthBench {
  /** Pieces a member. */
  @Param({"3", "6", "12", "24", "48"})
  public int pieces;

  private SparseSymmetric matrix;
  private double[] side;
  private double[] x;
  private LdlRepeat repeat;

  /** Makes and checks the system. */
  @Setup
  public void prepare() {
    matrix = Cases.prepared(Cases.pieces(pieces)).system().matrix();
    side = Cases.positions(matrix, 3, 1)[0];
    x = new double[side.length];
    repeat = new LdlRepeat(pattern());
    factorSolve();
    Verify.residual(matrix, x, side);
  }

  private LdlPattern pattern() {
    return LdlPattern.of(matrix, MinimumDegree.order(matrix, Cases.nodes(matrix)));
  }

  /** Numbers changed, places known: factor and one solution. */
  @Benchmark
  public double factorSolve() {
    if (repeat.factor(matrix).isPresent()) {
      throw new IllegalStateException("singular");
    }
    repeat.solve(side, x);
    return x[2];
  }

  /** What a topology costs once: order, tree, groups. */
  @Benchmark
  public int orderAndPattern() {
    return pattern().entries();
  }
}
