package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.quantity.Writing;
import org.stoutwork.wood.time.CumulativeLoad;
import org.stoutwork.wood.time.DurationClass;

/** Finds how long something lasts from the times at which it comes, and notes what that makes. */
final class Lasting {

  private static final int DIGITS = 3;

  private Lasting() {}

  /**
   * The duration class.
   *
   * @param answers notes the class that follows
   * @param key of the class
   * @param times at which it comes; empty takes the usual class
   * @param usual class
   */
  static DurationClass of(
      Answers answers, String key, Optional<CumulativeLoad> times, DurationClass usual) {
    return times
        .map(
            load ->
                answers.or(
                    key,
                    Optional.empty(),
                    load.durationClass(),
                    load.durationClass().words(),
                    inWords(load)))
        .orElse(usual);
  }

  private static String inWords(CumulativeLoad load) {
    return "%s h a day, %s days a year, %s years: %s h in all"
        .formatted(
            number(load.hoursPerDay()),
            number(load.daysPerYear()),
            number(load.years()),
            number(load.hours()));
  }

  private static String number(double value) {
    return Writing.number(value, DIGITS);
  }
}
