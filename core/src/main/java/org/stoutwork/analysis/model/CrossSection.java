package org.stoutwork.analysis.model;

/**
 * Stiffness properties of a member's section about its local axes.
 *
 * @param area mm², positive
 * @param iy second moment about local y (bending in the local x-z plane), mm⁴, positive
 * @param iz second moment about local z (bending in the local x-y plane), mm⁴, positive
 * @param j torsion constant, mm⁴, positive
 * @param asy shear area for shear along local y, mm²; 0 means no shear deformation
 * @param asz shear area for shear along local z, mm²; 0 means no shear deformation
 */
public record CrossSection(double area, double iy, double iz, double j, double asy, double asz) {
  /** Checks the ranges. */
  public CrossSection {
    Check.positive("area", area, "mm²");
    Check.positive("second moment Iy", iy, "mm⁴");
    Check.positive("second moment Iz", iz, "mm⁴");
    Check.positive("torsion constant J", j, "mm⁴");
    Check.notNegative("shear area along y", asy, "mm²");
    Check.notNegative("shear area along z", asz, "mm²");
  }
}
