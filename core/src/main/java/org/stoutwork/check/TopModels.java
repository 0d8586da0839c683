package org.stoutwork.check;

/** Which models of the top are worked out. */
public enum TopModels {
  /** A plate, by which the top is judged, and a grillage of strips beside it. */
  PLATE_AND_GRILLAGE,
  /** The grillage of strips alone. */
  GRILLAGE
}
