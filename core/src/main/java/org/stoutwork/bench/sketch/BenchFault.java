package org.stoutwork.bench.sketch;

import java.util.Optional;

/**
 * Something in a description that cannot be built or checked.
 *
 * @param key where it stands in the description
 * @param given what was given there, in words
 * @param allowed what is allowed, and what to write instead
 * @param nearest the nearest right spelling, where there is one
 */
public record BenchFault(String key, String given, String allowed, Optional<String> nearest) {

  /** A fault without a spelling to offer. */
  public static BenchFault of(String key, String given, String allowed) {
    return new BenchFault(key, given, allowed, Optional.empty());
  }

  /** The fault in one line. */
  public String line() {
    return "%s is %s; %s.%s"
        .formatted(
            key, given, allowed, nearest.map(n -> " Did you mean \"" + n + "\"?").orElse(""));
  }
}
