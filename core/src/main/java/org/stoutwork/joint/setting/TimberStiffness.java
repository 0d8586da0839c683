package org.stoutwork.joint.setting;

/**
 * Elastic values of one piece of wood along the grain (L), across the rings (R) and along the rings
 * (T), MPa, means.
 *
 * @param eL modulus along the grain
 * @param eR modulus across the rings
 * @param eT modulus along the rings
 * @param gLR shear modulus in the quartered face
 * @param gLT shear modulus in the flat-sawn face
 * @param gRT rolling shear modulus
 * @param nuLR Poisson ratio, squeezed along L, growing along R
 * @param nuLT Poisson ratio, squeezed along L, growing along T
 * @param meanDensity kg/m³, for slip moduli
 */
public record TimberStiffness(
    double eL,
    double eR,
    double eT,
    double gLR,
    double gLT,
    double gRT,
    double nuLR,
    double nuLT,
    double meanDensity) {

  /** Checks that every modulus is above nought. */
  public TimberStiffness {
    for (double modulus : new double[] {eL, eR, eT, gLR, gLT, gRT, meanDensity}) {
      if (!(modulus > 0)) {
        throw new IllegalArgumentException(
            "moduli and density of wood must be above 0; one was " + modulus);
      }
    }
  }

  /** Modulus across the grain in the given direction, MPa. */
  public double across(FaceGrain direction) {
    return direction.pick(eR, eT);
  }

  /** Shear modulus of the plane of the grain and the given direction, MPa. */
  public double shearWith(FaceGrain direction) {
    return direction.pick(gLR, gLT);
  }

  /** Poisson ratio of the grain and the given direction. */
  public double poissonWith(FaceGrain direction) {
    return direction.pick(nuLR, nuLT);
  }
}
