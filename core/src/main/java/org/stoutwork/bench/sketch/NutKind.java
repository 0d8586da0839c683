package org.stoutwork.bench.sketch;

/** The nuts of a bed bolt. */
public enum NutKind {
  BARREL("barrel nut"),
  CAPTIVE("captive nut");

  private final String words;

  NutKind(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
