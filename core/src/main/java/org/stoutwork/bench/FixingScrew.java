package org.stoutwork.bench;

/** The screws that hold a top down. */
public enum FixingScrew {
  COACH_SCREW("coach screw"),
  WOOD_SCREW("wood screw");

  private final String words;

  FixingScrew(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
