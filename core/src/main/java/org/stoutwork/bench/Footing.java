package org.stoutwork.bench;

import org.stoutwork.source.Source;

/** What the feet stand on and with. */
public enum Footing {
  /** Dusty boards, or nobody knows. */
  UNKNOWN("unknown or dusty floor", 0.3),
  /** Bare wood on clean concrete or boards. */
  BARE("bare feet on a clean floor", 0.4),
  /** Rubber pads on a clean floor; sawdust takes much of it away. */
  PADS("rubber pads on a clean floor", 0.6),
  /** Held to the floor by fixings, which are not part of this check. */
  FIXED("fixed to the floor", Double.POSITIVE_INFINITY);

  private static final Source FRICTION =
      Source.projectDefault(
          "friction of a bench on a floor: 0.3 dusty, 0.4 wood on clean concrete or boards, 0.6"
              + " rubber pads; published figures scatter from 0.3 to 0.8");

  private final String words;
  private final double friction;

  Footing(String words, double friction) {
    this.words = words;
    this.friction = friction;
  }

  /** The footing as it is written and printed. */
  public String words() {
    return words;
  }

  /** Coefficient of friction, a ratio; without limit where the bench is fixed. */
  public double friction() {
    return friction;
  }

  /** Where the coefficient comes from. */
  public Source source() {
    return FRICTION;
  }
}
