package org.stoutwork.analysis.model;

/**
 * Elastic constants of an orthotropic layer whose axes 1, 2 lie in its plane and 3 at right angles.
 *
 * @param e1 modulus along axis 1, MPa
 * @param e2 modulus along axis 2, MPa
 * @param g12 shear modulus in the plane, MPa
 * @param g13 transverse shear modulus of the plane 1-3, MPa
 * @param g23 transverse shear modulus of the plane 2-3, MPa
 * @param nu12 Poisson's ratio: strain along 2 (shortening) per strain along 1 under stress along 1
 * @param density kg/m³; 0 where weight and mass do not matter
 */
public record PanelMaterial(
    double e1, double e2, double g12, double g13, double g23, double nu12, double density) {

  /**
   * Checks that the layer stores energy under every strain.
   *
   * @throws IllegalArgumentException for a modulus not above zero or |ν12| ≥ √(E1/E2)
   */
  public PanelMaterial {
    Check.positive("E1 of a panel", e1, "MPa");
    Check.positive("E2 of a panel", e2, "MPa");
    Check.positive("G12 of a panel", g12, "MPa");
    Check.positive("G13 of a panel", g13, "MPa");
    Check.positive("G23 of a panel", g23, "MPa");
    Check.finite("nu12 of a panel", nu12);
    Check.notNegative("density of a panel", density, "kg/m3");
    if (!(nu12 * nu12 < e1 / e2)) {
      throw new IllegalArgumentException(
          "nu12 of a panel must stay between -"
              + Math.sqrt(e1 / e2)
              + " and +"
              + Math.sqrt(e1 / e2)
              + " (the square root of E1/E2), not "
              + nu12
              + "; were the two directions swapped?");
    }
  }

  /** Equal in all directions: G = E / (2 (1 + ν)). */
  public static PanelMaterial isotropic(double e, double nu, double density) {
    double g = e / (2 * (1 + nu));
    return new PanelMaterial(e, e, g, g, g, nu, density);
  }

  /** The other Poisson's ratio, ν21 = ν12 E2 / E1. */
  public double nu21() {
    return nu12 * e2 / e1;
  }

  /** The same material with its axes 1 and 2 exchanged. */
  public PanelMaterial turned() {
    return new PanelMaterial(e2, e1, g12, g23, g13, nu21(), density);
  }
}
