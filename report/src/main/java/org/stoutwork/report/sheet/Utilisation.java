package org.stoutwork.report.sheet;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Demand over capacity as it is shown.
 *
 * @param value the deciding figure, at least 0; empty if nothing was checked
 * @param favourable the least figure of a range; equal to the value where there is no range
 * @param verdict what it means
 */
public record Utilisation(OptionalDouble value, OptionalDouble favourable, Verdict verdict) {

  /**
   * @throws IllegalArgumentException if the figure is missing though something was checked, or is
   *     negative or not a number
   */
  public Utilisation {
    if (value.isEmpty() != (verdict == Verdict.NOT_CHECKED)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "a verdict of \"%s\" does not go with %s", verdict.words(), value));
    }
    if (value.isPresent() && !(value.getAsDouble() >= 0)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "utilisation is at least 0; %s was given", value.getAsDouble()));
    }
    if (favourable.isPresent()
        && !(value.isPresent() && favourable.getAsDouble() <= value.getAsDouble())) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the favourable end is at most the deciding figure; %s and %s were given",
              favourable,
              value));
    }
  }

  /** The figure as it is printed; a dash where nothing was checked. */
  public String figure() {
    return value.isEmpty()
        ? "\u2013"
        : org.stoutwork.result.Utilisation.shown(value.getAsDouble()).replace("over", ">");
  }

  /** A single figure. */
  public static Utilisation of(double value, Verdict verdict) {
    return new Utilisation(OptionalDouble.of(value), OptionalDouble.empty(), verdict);
  }

  /** A range, of which the unfavourable end decides. */
  public static Utilisation between(double favourable, double value, Verdict verdict) {
    return new Utilisation(OptionalDouble.of(value), OptionalDouble.of(favourable), verdict);
  }

  /** Nothing was checked. */
  public static Utilisation notChecked() {
    return new Utilisation(OptionalDouble.empty(), OptionalDouble.empty(), Verdict.NOT_CHECKED);
  }
}
