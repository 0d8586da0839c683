package org.stoutwork.analysis.model;

/**
 * What a panel resists per unit of its width: bending, twisting, transverse shear, and stretching
 * in its own plane. Directions 1 and 2 are the panel's x (along) and y (across).
 *
 * <p>Bending and stretching are not coupled: the reference surface is the one about which they are
 * not (the middle of a solid panel, the neutral surface of a layered one).
 *
 * @param d11 bending stiffness along x, N mm
 * @param d12 coupling of both bendings, N mm
 * @param d22 bending stiffness along y, N mm
 * @param d66 twisting stiffness, Mxy per twist 2 ∂²w/∂x∂y, N mm
 * @param a44 shear stiffness for Qy (κ G23 h), N/mm
 * @param a55 shear stiffness for Qx (κ G13 h), N/mm
 * @param c11 stiffness against stretching along x (E1 h / (1 - ν12 ν21)), N/mm
 * @param c12 coupling of both stretchings, N/mm
 * @param c22 stiffness against stretching along y, N/mm
 * @param c66 shear stiffness in the plane (G12 h), N/mm
 * @param mass kg/m²
 */
public record PanelSection(
    double d11,
    double d12,
    double d22,
    double d66,
    double a44,
    double a55,
    double c11,
    double c12,
    double c22,
    double c66,
    double mass) {

  /** Shear correction of a solid rectangular section (E. Reissner, J. Appl. Mech. 12, 1945). */
  public static final double KAPPA = 5.0 / 6.0;

  /**
   * Checks that the section stores energy under every deformation.
   *
   * @throws IllegalArgumentException for a stiffness not above zero or a coupling too large
   */
  public PanelSection {
    Check.positive("D11 of a panel", d11, "N mm");
    Check.positive("D22 of a panel", d22, "N mm");
    Check.positive("D66 of a panel", d66, "N mm");
    Check.positive("A44 of a panel", a44, "N/mm");
    Check.positive("A55 of a panel", a55, "N/mm");
    Check.positive("C11 of a panel", c11, "N/mm");
    Check.positive("C22 of a panel", c22, "N/mm");
    Check.positive("C66 of a panel", c66, "N/mm");
    Check.notNegative("mass of a panel", mass, "kg/m2");
    coupling("D12", d12, d11, d22);
    coupling("C12", c12, c11, c22);
  }

  private static void coupling(String what, double value, double first, double second) {
    if (!(value * value < first * second)) {
      throw new IllegalArgumentException(
          what
              + " of a panel must stay below "
              + Math.sqrt(first * second)
              + " (the geometric mean of its neighbours), not "
              + value);
    }
  }

  /**
   * One solid layer with axis 1 of its material along x: D11 = E1 h³ / 12 (1 - ν12 ν21) and so on
   * (S. P. Timoshenko, S. Woinowsky-Krieger, <em>Theory of Plates and Shells</em>, 2nd ed., article
   * 85).
   *
   * @param material elastic constants
   * @param thickness h, mm
   */
  public static PanelSection solid(PanelMaterial material, double thickness) {
    Check.positive("thickness of a panel", thickness, "mm");
    double h = thickness;
    double inertia = h * h / 12;
    double c = h / (1 - material.nu12() * material.nu21());
    double c11 = material.e1() * c;
    double c22 = material.e2() * c;
    double c12 = material.nu12() * c22;
    double c66 = material.g12() * h;
    return new PanelSection(
        c11 * inertia,
        c12 * inertia,
        c22 * inertia,
        c66 * inertia,
        KAPPA * material.g23() * h,
        KAPPA * material.g13() * h,
        c11,
        c12,
        c22,
        c66,
        material.density() * h / 1000);
  }

  /**
   * Bending given directly; stretching in the plane as in a solid layer of the same bending
   * stiffness and the given thickness, C = 12 D / h².
   *
   * @param thickness equivalent thickness for the plane, mm
   */
  public static PanelSection bending(
      double d11,
      double d12,
      double d22,
      double d66,
      double a44,
      double a55,
      double thickness,
      double mass) {
    Check.positive("thickness of a panel", thickness, "mm");
    double f = 12 / (thickness * thickness);
    return new PanelSection(d11, d12, d22, d66, a44, a55, f * d11, f * d12, f * d22, f * d66, mass);
  }

  /** The section with its two directions exchanged. */
  public PanelSection turned() {
    return new PanelSection(d22, d12, d11, d66, a55, a44, c22, c12, c11, c66, mass);
  }

  /**
   * The section with all stiffness and the mass in proportion to what is left of it. Of holes this
   * takes too little account, see {@link #withHoles}.
   *
   * @param part what is left, above 0 and not above 1
   */
  public PanelSection reduced(double part) {
    if (!(part > 0 && part <= 1)) {
      throw new IllegalArgumentException(
          "what is left of a section must lie above 0 and not above 1, not " + part);
    }
    return new PanelSection(
        part * d11,
        part * d12,
        part * d22,
        part * d66,
        part * a44,
        part * a55,
        part * c11,
        part * c12,
        part * c22,
        part * c66,
        part * mass);
  }

  /**
   * The section of a strip as wide as the round holes that run along it in a row, their material
   * taken away evenly, for a {@link PanelZone}.
   *
   * <p>A hole does more than take its area away: material before and behind it carries little too,
   * the further the stiffer the grain in that direction. A few holes in a wide sheet under a stress
   * along 1 add 1 + n1 times their share φ of the area to its compliance, 1 + n1 being the stress
   * beside a hole over that far from it, n1² = 2 (√(E1/E2) - ν12) + E1/G12 (S. G. Lekhnitskii,
   * <em>Anisotropic Plates</em>, from memory; 3 φ in an isotropic sheet); likewise along 2. Bending
   * is taken to suffer as stretching does, twisting and coupling by the mean of both directions,
   * transverse shear and mass by the area alone. Strips of this section deflect tops like rows of
   * real openings to about a fifth of the difference that the holes make, under loads nearby.
   *
   * @param diameter of the holes and width of the strip, mm
   * @param spacing of the holes' middles along the strip, mm; not below the diameter
   */
  public PanelSection withHoles(double diameter, double spacing) {
    Check.positive("diameter of holes in a panel", diameter, "mm");
    if (!(spacing >= diameter)) {
      throw new IllegalArgumentException(
          "holes of " + diameter + " mm must be " + diameter + " mm apart or more, not " + spacing);
    }
    double share = Math.PI / 4 * diameter / spacing;
    double nu12 = c12 / c22;
    double nu21 = c12 / c11;
    double shear = c11 * (1 - nu12 * nu21) / c66;
    double root = Math.sqrt(c11 / c22);
    double left1 = 1 / (1 + share * (1 + Math.sqrt(2 * (root - nu12) + shear)));
    double left2 = 1 / (1 + share * (1 + Math.sqrt(2 * (1 / root - nu21) + shear * c22 / c11)));
    double mean = Math.sqrt(left1 * left2);
    double area = 1 - share;
    return new PanelSection(
        left1 * d11,
        mean * d12,
        left2 * d22,
        mean * d66,
        area * a44,
        area * a55,
        left1 * c11,
        mean * c12,
        left2 * c22,
        mean * c66,
        area * mass);
  }

  /** The section with other transverse shear stiffness, N/mm. */
  public PanelSection withShear(double newA44, double newA55) {
    return new PanelSection(d11, d12, d22, d66, newA44, newA55, c11, c12, c22, c66, mass);
  }
}
