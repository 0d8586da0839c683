package org.stoutwork.assembly;

/** What a part of the frame is. */
public enum PartKind {
  LEG("leg"),
  TOP_RAIL("top rail"),
  BOTTOM_RAIL("bottom rail"),
  FOOT("foot"),
  STRETCHER("stretcher"),
  TOP("top");

  private final String words;

  PartKind(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }
}
