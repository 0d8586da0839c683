package org.stoutwork.bench.sketch;

/**
 * The kinds of joint that a maker can name. A tenon named by its shape is a mortise and tenon with
 * the proportions of that shape; shapes are put together by the keys of its sizes.
 */
public enum JointKind {
  MORTISE_AND_TENON("mortise and tenon"),
  THROUGH_TENON("through tenon"),
  HAUNCHED_TENON("haunched tenon"),
  STUB_TENON("stub tenon"),
  TWIN_TENON("twin tenon"),
  BRIDLE("bridle"),
  CORNER_BRIDLE("corner bridle"),
  BED_BOLT("stub tenon and bed bolt"),
  LOOSE_WEDGE("loose-wedge tenon"),
  HALF_LAP("half-lap"),
  DOWELLED("dowelled butt"),
  HOUSING("housing"),
  SCREWED_BUTT("screwed butt");

  private final String words;

  JointKind(String words) {
    this.words = words;
  }

  /** The kind as it is written and printed. */
  public String words() {
    return words;
  }
}
