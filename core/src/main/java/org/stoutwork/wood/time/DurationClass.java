package org.stoutwork.wood.time;

import java.util.Locale;

/**
 * Duration class of a load by the time that it acts in all, after EN 1995-1-1 Table 2.1. Longest
 * first.
 */
public enum DurationClass {
  /** More than ten years. */
  PERMANENT("permanent", UsDuration.PERMANENT),
  /** Six months to ten years. */
  LONG("long", UsDuration.TEN_YEARS),
  /** One week to six months. */
  MEDIUM("medium", UsDuration.TEN_YEARS),
  /** Less than one week. */
  SHORT("short", UsDuration.TWO_MONTHS),
  /** Seconds to minutes. */
  INSTANTANEOUS("instantaneous", UsDuration.TEN_MINUTES),
  /** Blows, less than two seconds; partial factors take it as instantaneous. */
  IMPACT("impact", UsDuration.IMPACT);

  private final String column;
  private final UsDuration cautious;

  DurationClass(String column, UsDuration cautious) {
    this.column = column;
    this.cautious = cautious;
  }

  /** The class as it is printed. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Column of the table of k_mod. */
  String column() {
    return this == IMPACT ? INSTANTANEOUS.column : column;
  }

  /**
   * The duration of allowable stress design that is taken with this class: for medium and short
   * loads one step longer than the times would allow.
   */
  UsDuration cautious() {
    return cautious;
  }
}
