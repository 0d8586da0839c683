package org.stoutwork.fastener;

/** Property classes of steel bolts, ISO 898-1; from memory. */
public enum BoltClass {
  C4_6("4.6", 400),
  C5_6("5.6", 500),
  C8_8("8.8", 800),
  C10_9("10.9", 1000);

  private final String words;
  private final double ultimate;

  BoltClass(String words, double ultimate) {
    this.words = words;
    this.ultimate = ultimate;
  }

  /** As it is stamped on the head. */
  public String words() {
    return words;
  }

  /** Nominal tensile strength f_ub, MPa. */
  public double ultimate() {
    return ultimate;
  }
}
