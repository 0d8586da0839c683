package org.stoutwork.joint.setting;

/**
 * Strengths of one piece of wood at design level for one basis, MPa, with what fastener formulas
 * need besides.
 *
 * @param fM bending
 * @param fT0 tension along the grain
 * @param fT90 tension across the grain
 * @param fC0 compression along the grain
 * @param fC90 compression across the grain
 * @param fV shear along the grain
 * @param shearMean mean shear strength of clear wood, MPa; 0 if unknown, then f_v is used
 * @param density characteristic, kg/m³
 * @param gravity oven-dry specific gravity
 * @param hardwood whether it is a hardwood
 * @param modulus mean, along the grain, MPa
 * @param bendingMean bending strength at breaking, MPa: mean of clear wood, or characteristic of a
 *     strength class; 0 if unknown, then f_m is used
 */
public record TimberStrength(
    double fM,
    double fT0,
    double fT90,
    double fC0,
    double fC90,
    double fV,
    double shearMean,
    double density,
    double gravity,
    boolean hardwood,
    double modulus,
    double bendingMean) {

  /** Checks that every needed strength is above nought. */
  public TimberStrength {
    for (double f : new double[] {fM, fT0, fT90, fC0, fC90, fV, density, gravity, modulus}) {
      if (!(f > 0)) {
        throw new IllegalArgumentException(
            "strengths, density, gravity and modulus of wood must be above 0; one was " + f);
      }
    }
    if (!(shearMean >= 0 && bendingMean >= 0)) {
      throw new IllegalArgumentException(
          "mean shear and mean bending must be 0 (unknown) or more; they were %s, %s"
              .formatted(shearMean, bendingMean));
    }
  }
}
