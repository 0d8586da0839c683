package org.stoutwork.action;

/** The way a horizontal force goes; it is tried with both signs. */
public enum Way {
  ALONG("along the bench"),
  ACROSS("across the bench");

  private final String words;

  Way(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }
}
