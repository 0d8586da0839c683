package org.stoutwork.wood;

import org.stoutwork.source.Source;

/**
 * Moduli as ratios to E_L, and Poisson ratios, near 12 % moisture content. L is along the grain, R
 * across the growth rings, T along the rings.
 *
 * @param et E_T/E_L, between 0 and 1
 * @param er E_R/E_L, between 0 and 1
 * @param glr G_LR/E_L, between 0 and 1
 * @param glt G_LT/E_L, between 0 and 1
 * @param grt G_RT/E_L, between 0 and 1
 * @param nuLr Poisson ratio for load along L, strain along R
 * @param nuLt Poisson ratio for load along L, strain along T
 * @param nuRt Poisson ratio for load along R, strain along T
 * @param source of the ratios
 */
public record ElasticRatios(
    double et,
    double er,
    double glr,
    double glt,
    double grt,
    double nuLr,
    double nuLt,
    double nuRt,
    Source source) {

  /**
   * @throws IllegalArgumentException if a ratio of moduli is outside 0 to 1, or a Poisson ratio
   *     outside 0 to 1.2
   */
  public ElasticRatios {
    for (double ratio : new double[] {et, er, glr, glt, grt}) {
      requireBetween(ratio, 1);
    }
    for (double nu : new double[] {nuLr, nuLt, nuRt}) {
      requireBetween(nu, 1.2);
    }
  }

  private static void requireBetween(double ratio, double most) {
    if (!(ratio > 0 && ratio < most)) {
      throw new IllegalArgumentException(
          "an elastic ratio lies between 0 and %s; it was %s".formatted(most, ratio));
    }
  }
}
