package org.stoutwork.wood.scatter;

/**
 * A lognormal distribution, by the mean and standard deviation of the logarithm.
 *
 * @param logMean mean of the natural logarithm
 * @param logDeviation standard deviation of the natural logarithm, at least 0
 */
public record Lognormal(double logMean, double logDeviation) {

  /**
   * @throws IllegalArgumentException if a parameter is not finite or the deviation below 0
   */
  public Lognormal {
    if (!Double.isFinite(logMean) || !(logDeviation >= 0 && Double.isFinite(logDeviation))) {
      throw new IllegalArgumentException(
          "a lognormal needs finite parameters and no negative deviation; it had %s and %s"
              .formatted(logMean, logDeviation));
    }
  }

  /**
   * The distribution with a given mean and coefficient of variation.
   *
   * @throws IllegalArgumentException if the mean is not above 0 or the coefficient below 0
   */
  public static Lognormal of(double mean, double coefficientOfVariation) {
    if (!(mean > 0) || !(coefficientOfVariation >= 0)) {
      throw new IllegalArgumentException(
          "a mean must be above 0 and a coefficient of variation at least 0; they were %s and %s"
              .formatted(mean, coefficientOfVariation));
    }
    double variance = Math.log1p(coefficientOfVariation * coefficientOfVariation);
    return new Lognormal(Math.log(mean) - variance / 2, Math.sqrt(variance));
  }

  /** The value at so many standard deviations of the logarithm from its mean. */
  public double at(double standardNormal) {
    return Math.exp(logMean + logDeviation * standardNormal);
  }

  /** The mean. */
  public double mean() {
    return Math.exp(logMean + logDeviation * logDeviation / 2);
  }

  /** The value that all but 5 % exceed. */
  public double exclusion5() {
    return at(-Variability.Z_5);
  }
}
