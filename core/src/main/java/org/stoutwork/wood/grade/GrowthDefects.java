package org.stoutwork.wood.grade;

/** How clean a piece is, in plain words; the ratios that go with them stand in a table. */
public enum GrowthDefects {
  /** No knots, no checks. */
  CLEAR("clear"),
  /** A few small knots: none wider than a sixth of the face, none at an edge under load. */
  FEW_SMALL_KNOTS("few-small-knots"),
  /** Knots up to a third of the face. */
  KNOTTY("knotty");

  private final String key;

  GrowthDefects(String key) {
    this.key = key;
  }

  /** The short name in files and tables. */
  public String key() {
    return key;
  }
}
