package org.stoutwork.bench;

/** Which way the grain of a layer of the top runs. */
public enum Grain {
  ALONG("along"),
  ACROSS("across");

  private final String words;

  Grain(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
