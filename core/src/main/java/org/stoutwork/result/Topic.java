package org.stoutwork.result;

/** What a check looks at; the sheet groups by it. */
public enum Topic {
  TOP("top"),
  SWAY("sway and racking"),
  MEMBER("members"),
  JOINT("joints"),
  STABILITY("standing"),
  MOVEMENT("movement of the wood"),
  OTHER("other");

  private final String words;

  Topic(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }
}
