package org.stoutwork.bench;

/** The safety format of the strength checks; one sheet uses one. */
public enum BasisChoice {
  /** Means of clear wood, their lower values, and a divisor: allowable stresses. */
  CLEAR_WOOD("clear-wood allowable"),
  /** Strength classes with partial factors. */
  PARTIAL_FACTORS("partial factors");

  private final String words;

  BasisChoice(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }
}
