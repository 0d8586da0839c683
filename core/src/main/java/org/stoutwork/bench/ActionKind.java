package org.stoutwork.bench;

/** The kinds of action that a maker can state for a bench. */
public enum ActionKind {
  /** A downward force that may stand anywhere on the top. */
  POINT_ON_TOP("point on the top"),
  /** A downward force spread over the whole top. */
  SPREAD_ON_TOP("spread over the top"),
  /** A small downward force under which the top must stay flat while planing. */
  PLANE_ON_TOP("plane on the top"),
  /** A push along the bench at the height of the top. */
  THRUST_ALONG("thrust along"),
  /** A push across the bench at the height of the top. */
  THRUST_ACROSS("thrust across"),
  /** A downward force on the edge of the top or on a vise jaw. */
  SITTING_ON_EDGE("sitting on the edge");

  private final String words;

  ActionKind(String words) {
    this.words = words;
  }

  /** The kind as it is written and printed. */
  public String words() {
    return words;
  }
}
