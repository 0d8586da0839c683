package org.stoutwork.bench;

/**
 * Which screw of each top rail stands in a hole that fits it and so keeps the top in its place; the
 * others stand in holes or slots that let the top move.
 */
public enum TopHeld {
  /** The middle one of an odd number: the top moves to the front and to the back. */
  MIDDLE("middle"),
  /** The foremost: the front edge stays where it is. */
  FRONT("front"),
  /** None: all have the same play. */
  NOWHERE("nowhere");

  private final String words;

  TopHeld(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
