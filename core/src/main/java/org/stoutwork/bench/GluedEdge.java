package org.stoutwork.bench;

/** The edge of a stretcher on which a piece is glued to deepen its end. */
public enum GluedEdge {
  BELOW("below"),
  ABOVE("above");

  private final String words;

  GluedEdge(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
