package org.stoutwork.bench;

/** An edge of the top. */
public enum Edge {
  FRONT("front"),
  BACK("back"),
  LEFT("left"),
  RIGHT("right");

  private final String words;

  Edge(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }

  /** Whether a vise here pulls across the bench. */
  public boolean isLong() {
    return this == FRONT || this == BACK;
  }
}
