package org.stoutwork.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.LongSupplier;

/**
 * Times contestants side by side in one virtual machine, each round in shuffled order, so that a
 * noisy minute falls on all of them alike. Ratios are of medians.
 *
 * <p>What counts is the time that the measuring thread was given by the processor, so that a busy
 * neighbour who takes the core away is not counted (one who shares its caches still is).
 */
final class Contest {
  private static final long SAMPLE = 20_000_000L;
  private static final long WARM = 3_000_000_000L;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /**
   * Something to be timed.
   *
   * @param name what the table calls it
   * @param once one unit of work; returns a number that depends on the result
   */
  record Contestant(String name, Work once) {}

  /** One unit of work. */
  @FunctionalInterface
  interface Work {
    double run();
  }

  /** Times of one contestant, ns a unit, ascending. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Times(String name, double[] sorted) {
    double median() {
      return sorted[sorted.length / 2];
    }

    double best() {
      return sorted[0];
    }

    /** The same shared out to several variants. */
    Times over(int variants) {
      return new Times(name, Arrays.stream(sorted).map(t -> t / variants).toArray());
    }

    /** 75th percentile over minimum: what the neighbours did meanwhile. */
    double noise() {
      return sorted[sorted.length * 3 / 4] / sorted[0];
    }

    String print() {
      return String.format(
          Locale.ROOT,
          "%s %.4g us (min %.4g, p75/min %.2f)",
          name,
          median() / 1000,
          best() / 1000,
          noise());
    }
  }

  private static volatile double sink;

  private Contest() {}

  /** Times contestants of one thread each, by processor time. */
  static List<Times> run(int rounds, List<Contestant> all) {
    return run(rounds, all, THREADS::getCurrentThreadCpuTime);
  }

  /** Times contestants that use threads of their own, by the clock on the wall. */
  static List<Times> byWall(int rounds, List<Contestant> all) {
    return run(rounds, all, System::nanoTime);
  }

  private static List<Times> run(int rounds, List<Contestant> all, LongSupplier clock) {
    int n = all.size();
    long[] repeat = new long[n];
    for (int k = 0; k < n; k++) {
      repeat[k] = warmUp(all.get(k).once(), clock);
    }
    double[][] times = new double[n][rounds];
    Random random = new Random(n);
    int[] order = new int[n];
    Arrays.setAll(order, k -> k);
    for (int round = 0; round < rounds; round++) {
      for (int k = n - 1; k > 0; k--) {
        int other = random.nextInt(k + 1);
        int held = order[k];
        order[k] = order[other];
        order[other] = held;
      }
      for (int k : order) {
        times[k][round] = time(all.get(k).once(), repeat[k], clock) / (double) repeat[k];
      }
    }
    for (double[] t : times) {
      Arrays.sort(t);
    }
    Times[] result = new Times[n];
    Arrays.setAll(result, k -> new Times(all.get(k).name(), times[k]));
    return List.of(result);
  }

  /** Runs until compiled, once at least; returns repetitions for one sample. */
  private static long warmUp(Work work, LongSupplier clock) {
    long begin = clock.getAsLong();
    long last;
    do {
      last = time(work, 1, clock);
    } while (clock.getAsLong() - begin < WARM);
    return Math.max(1, SAMPLE / Math.max(1, last) + 1);
  }

  private static long time(Work work, long repeat, LongSupplier clock) {
    double sum = 0;
    long begin = clock.getAsLong();
    for (long k = 0; k < repeat; k++) {
      sum += work.run();
    }
    long taken = clock.getAsLong() - begin;
    sink = sum;
    if (Double.isNaN(sink)) {
      throw new IllegalStateException("a timed path returned no number");
    }
    return taken;
  }
}
