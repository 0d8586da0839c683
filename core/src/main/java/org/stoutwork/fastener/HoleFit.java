package org.stoutwork.fastener;

/**
 * How wide the hole for a bolt is drilled. A hole 1 mm wider than its bolt is the widest that EN
 * 1995-1-1, 10.4.3, lets count as a bolt hole; from memory.
 */
public enum HoleFit {
  /** As wide as the bolt. */
  FITTED("fitted", 0),
  /** A millimetre wider, so that the bolt slides in. */
  CLEARANCE("clearance", 1),
  /** Three millimetres wider, so that holes that do not meet can be lived with. */
  OVERSIZE("oversize", 3);

  private final String words;
  private final double play;

  HoleFit(String words, double play) {
    this.words = words;
    this.play = play;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }

  /** Diameter of the hole for a bolt, mm. */
  public double diameter(double bolt) {
    return bolt + play;
  }
}
