package org.stoutwork.bench.sketch;

/** Where something heavy lies. */
public enum WeightKind {
  MACHINE("machine"),
  ON_TOP("on the top"),
  ON_SHELF("on the shelf"),
  BALLAST("ballast below");

  private final String words;

  WeightKind(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
