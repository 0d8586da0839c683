package org.stoutwork.bench;

/** How a top rail meets its legs. */
public enum Seat {
  /** Tenoned between the legs, which run up to the underside of the top. */
  BETWEEN("between the legs"),
  /** Lies over the leg ends, which are tenoned up into it. */
  OVER("over the legs");

  private final String words;

  Seat(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }
}
