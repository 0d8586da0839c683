package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.quantity.Length;

/** Collects, while a description is completed, the defaults that are taken and the faults found. */
final class Answers {

  private final List<DefaultTaken> defaults = new ArrayList<>();
  private final List<BenchFault> faults = new ArrayList<>();

  /**
   * The defaults taken, each once.
   *
   * @param endFrames how many end frames the bench has
   */
  List<DefaultTaken> defaults(int endFrames) {
    return SharedDefaults.of(defaults, endFrames);
  }

  List<BenchFault> faults() {
    return List.copyOf(faults);
  }

  void fault(BenchFault fault) {
    faults.add(fault);
  }

  /** Notes a fault, saying so where the value at fault is a default. */
  void fault(String key, String given, String allowed) {
    // The places of end frames that nobody described are noted once, for all of them.
    String ofAll = key.replaceFirst("^endFrames\\[\\d+]", "endFrames");
    boolean byDefault =
        defaults.stream().anyMatch(d -> d.key().equals(key) || d.key().equals(ofAll));
    faults.add(BenchFault.of(key, byDefault ? given + " by default" : given, allowed));
  }

  /** The value given, or the default with its reason noted. */
  <T> T or(String key, Optional<T> given, T byDefault, String inWords, String reason) {
    if (given.isPresent()) {
      return given.get();
    }
    defaults.add(new DefaultTaken(key, inWords, reason));
    return byDefault;
  }

  /** A length given, or the default with its reason noted; refused outside its range. */
  Length length(
      String key, Optional<Length> given, Supplier<Double> defaultMm, Range range, String reason) {
    if (given.isPresent()) {
      return inRange(key, given.get(), range);
    }
    Length taken = Length.ofMm(range.nearest(defaultMm.get()));
    defaults.add(new DefaultTaken(key, taken.toString(), reason));
    return taken;
  }

  private Length inRange(String key, Length given, Range range) {
    if (range.holds(given.mm())) {
      return given;
    }
    fault(key, given.toString(), "%s is allowed".formatted(range));
    return Length.ofMm(range.nearest(given.mm()));
  }

  /**
   * What lengths are allowed, mm.
   *
   * @param least smallest
   * @param most largest
   */
  record Range(double least, double most) {

    boolean holds(double mm) {
      return mm >= least && mm <= most;
    }

    double nearest(double mm) {
      return Math.min(most, Math.max(least, mm));
    }

    @Override
    public String toString() {
      return "%s to %s".formatted(Length.ofMm(least), Length.ofMm(most));
    }
  }
}
