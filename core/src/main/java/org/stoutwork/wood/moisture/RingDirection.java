package org.stoutwork.wood.moisture;

/** How the growth rings lie to the width of a piece. */
public enum RingDirection {
  /** Quarter-sawn: the width runs across the rings. */
  RADIAL,
  /** Flat-sawn: the width runs along the rings. */
  TANGENTIAL,
  /** Not known, or mixed: both are answered, as the two ends of a range. */
  UNKNOWN
}
