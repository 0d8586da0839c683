package org.stoutwork.report.sheet;

/** How a check came out, as it is shown: a word, and a pattern for its bar. */
public enum Verdict {
  /** Open bar. */
  ADEQUATE("adequate"),
  /** Hatched bar. */
  MARGINAL("marginal"),
  /** Solid bar. */
  INADEQUATE("inadequate"),
  /** No bar: a dashed outline. */
  NOT_CHECKED("not checked");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The verdict in words. */
  public String words() {
    return words;
  }
}
