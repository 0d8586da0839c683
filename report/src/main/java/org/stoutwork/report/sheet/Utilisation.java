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

  private static final double CLOSE = 0.9;

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

  /**
   * A figure to two decimals that stays on its side of 0.9, from which a check is marginal, and of
   * 1: what fails never reads as 1.00, what is adequate never as 0.90.
   */
  public static String twoDecimals(double value) {
    double parts = value * 100;
    double shown =
        value > 1 && Math.rint(parts) <= 100
            ? 101
            : value < CLOSE && Math.rint(parts) >= CLOSE * 100 ? Math.floor(parts) : parts;
    return String.format(Locale.ROOT, "%.2f", shown / 100);
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
