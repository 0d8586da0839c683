package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.stream.Collectors;

/** A description that cannot be built or checked, with every fault found in it. */
public final class UnsoundBench extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<BenchFault> faults;

  /** Made with at least one fault. */
  public UnsoundBench(List<BenchFault> faults) {
    super(faults.stream().map(BenchFault::line).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, in the order of the description. */
  public List<BenchFault> faults() {
    return faults;
  }
}
