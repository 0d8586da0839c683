package org.stoutwork.wood.direction;

import org.stoutwork.source.Source;

/**
 * The moduli of a plate, in MPa, with direction 1 along the grain or the strength axis, 2 across it
 * in the plane, 3 through the thickness.
 *
 * @param e1 along, above 0
 * @param e2 across, above 0
 * @param g12 shear in the plane, above 0
 * @param g13 transverse shear for bending along, above 0
 * @param g23 transverse shear for bending across, above 0
 * @param nu12 Poisson ratio, load along 1, strain along 2
 * @param source the weakest of the sources
 */
public record PlateModuli(
    double e1, double e2, double g12, double g13, double g23, double nu12, Source source) {

  /**
   * @throws IllegalArgumentException if a modulus is not above 0, or the Poisson ratio is too large
   *     for the two moduli (the square of it times e2/e1 must stay below 1)
   */
  public PlateModuli {
    for (double modulus : new double[] {e1, e2, g12, g13, g23}) {
      if (!(modulus > 0 && Double.isFinite(modulus))) {
        throw new IllegalArgumentException(
            "a modulus must be above 0 MPa; it was %s".formatted(modulus));
      }
    }
    if (!(nu12 >= 0 && nu12 * nu12 * e2 / e1 < 1)) {
      throw new IllegalArgumentException(
          "a Poisson ratio of %s does not go with the moduli %s and %s".formatted(nu12, e1, e2));
    }
  }
}
