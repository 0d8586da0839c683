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
import org.stoutwork.analysis.solve.SpringSweep;

/** One variant of a sweep of joint springs; with {@code -prof gc} it shows that none is wasted. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseParallelGC"})
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 7, time = 1)
public class LowRankBench {
  /** Number of springs that differ. */
  @Param({"4", "8", "16", "24"})
  public int rank;

  private SweepRows.Prepared prepared;
  private SpringSweep.Workspace workspace;
  private int next;

  /** Prepares the sweep. */
  @Setup
  public void prepare() {
    prepared = SweepRows.prepared(rank);
    workspace = prepared.sweep().workspace();
  }

  /** One variant, all outputs. */
  @Benchmark
  public double woodbury() {
    double[] k = prepared.constants()[next++ & (prepared.constants().length - 1)];
    if (prepared.sweep().solve(k, workspace) != SpringSweep.State.UPDATED) {
      throw new IllegalStateException("a variant was not updated");
    }
    return workspace.value(0, 0);
  }
}
