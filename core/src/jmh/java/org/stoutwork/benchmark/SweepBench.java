package org.stoutwork.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stoutwork.analysis.solve.StiffnessSweep;

/** Variants in which everything differs, one thread; time a variant. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseParallelGC"})
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 7, time = 1)
public class SweepBench {
  private FullChange change;
  private StiffnessSweep.Workspace workspace;
  private int parts;
  private long next;

  /** Prepares and checks the sweep. */
  @Setup
  public void prepare() {
    change = new FullChange();
    change.check();
    workspace = change.sweep().workspace();
    parts = change.sweep().parts().size();
  }

  /** Assembling, factorising, three solutions, six outputs. */
  @Benchmark
  @OperationsPerInvocation(64)
  public double own() {
    change.batch(next, workspace, parts);
    next += 64;
    return workspace.value(3, 1, 5);
  }
}
