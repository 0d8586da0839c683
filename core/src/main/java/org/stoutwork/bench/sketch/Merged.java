package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.function.Supplier;

/** What is said of one part, or else what is said of all parts of its kind. */
final class Merged {

  private Merged() {}

  static <T> T of(Optional<T> own, Optional<T> shared, Supplier<T> empty) {
    return own.or(() -> shared).orElseGet(empty);
  }
}
