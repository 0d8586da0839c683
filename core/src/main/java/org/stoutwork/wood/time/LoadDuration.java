package org.stoutwork.wood.time;

/**
 * How long a load acts, in the terms of both systems.
 *
 * @param european class of EN 1995-1-1
 * @param american duration of allowable stress design
 */
public record LoadDuration(DurationClass european, UsDuration american) {

  /**
   * A class with the American duration that this project sets beside it: permanent, ten years, ten
   * years, two months, ten minutes, impact. For medium and short loads that is one step longer than
   * the time limits of the two systems would allow.
   */
  public static LoadDuration of(DurationClass european) {
    return new LoadDuration(european, european.cautious());
  }

  /** The same for a connection, which may not count on the impact factor. */
  public LoadDuration forConnection() {
    return american == UsDuration.IMPACT
        ? new LoadDuration(european, UsDuration.TEN_MINUTES)
        : this;
  }

  /**
   * The shorter of two: in a combination the shortest load decides. The longer loads alone must
   * still be checked.
   */
  public LoadDuration shorter(LoadDuration other) {
    return new LoadDuration(
        european.compareTo(other.european) >= 0 ? european : other.european,
        american.compareTo(other.american) >= 0 ? american : other.american);
  }

  /** Both durations in words. */
  public String words() {
    return "%s (%s)".formatted(european.words(), american.words());
  }
}
