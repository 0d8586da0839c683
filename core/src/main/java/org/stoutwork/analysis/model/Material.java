package org.stoutwork.analysis.model;

/**
 * Elastic constants of a member.
 *
 * @param e modulus along the member, MPa, positive
 * @param g shear modulus, MPa, positive
 * @param density kg/m³, zero or more
 */
public record Material(double e, double g, double density) {
  /** Checks the ranges. */
  public Material {
    Check.positive("modulus E", e, "MPa");
    Check.positive("shear modulus G", g, "MPa");
    Check.notNegative("density", density, "kg/m³");
  }
}
