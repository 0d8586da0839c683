package org.stoutwork.bench;

/** The line along the bench that a stretcher follows. */
public enum StretcherLine {
  /** From front leg to front leg. */
  FRONT("front"),
  /** From back leg to back leg. */
  BACK("back"),
  /** From rail to rail, at the middle. */
  MIDDLE("middle");

  private final String words;

  StretcherLine(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
