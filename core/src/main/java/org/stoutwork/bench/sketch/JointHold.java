package org.stoutwork.bench.sketch;

/** How the pieces of a joint are held together. */
public enum JointHold {
  GLUED("glued"),
  DRY("dry"),
  WEDGED("wedged"),
  WEDGED_AND_GLUED("wedged and glued"),
  FOX_WEDGED("fox-wedged"),
  FOX_WEDGED_AND_GLUED("fox-wedged and glued"),
  PEGGED("pegged"),
  PEGGED_AND_GLUED("pegged and glued"),
  DRAWBORED("drawbored"),
  DRAWBORED_AND_GLUED("drawbored and glued"),
  SCREWED("screwed"),
  SCREWED_AND_GLUED("screwed and glued");

  private final String words;

  JointHold(String words) {
    this.words = words;
  }

  /** As it is written and printed. */
  public String words() {
    return words;
  }

  boolean glued() {
    return this == GLUED
        || this == WEDGED_AND_GLUED
        || this == FOX_WEDGED_AND_GLUED
        || this == PEGGED_AND_GLUED
        || this == DRAWBORED_AND_GLUED
        || this == SCREWED_AND_GLUED;
  }

  boolean screwed() {
    return this == SCREWED || this == SCREWED_AND_GLUED;
  }

  boolean wedged() {
    return this == WEDGED || this == WEDGED_AND_GLUED || fox();
  }

  /** Wedged from within a blind mortise as the tenon is driven home. */
  boolean fox() {
    return this == FOX_WEDGED || this == FOX_WEDGED_AND_GLUED;
  }

  boolean pegged() {
    return drawbored() || this == PEGGED || this == PEGGED_AND_GLUED;
  }

  boolean drawbored() {
    return this == DRAWBORED || this == DRAWBORED_AND_GLUED;
  }
}
