package org.stoutwork.analysis.element;

/**
 * Stress resultants of a plate at one place, per unit of width.
 *
 * <p>Moments are positive when they pull the lower face (the side against the normal): Mx by
 * stresses along x, My along y, Mxy by positive shear stresses τxy on the lower face. Shear forces
 * are positive when they push the face of the positive side against the normal, so that Qx = ∂Mx/∂x
 * + ∂Mxy/∂y and Qy = ∂My/∂y + ∂Mxy/∂x.
 *
 * @param mx N mm/mm
 * @param my N mm/mm
 * @param mxy N mm/mm
 * @param qx N/mm
 * @param qy N/mm
 */
public record PlateForces(double mx, double my, double mxy, double qx, double qy) {
  /** Nothing. */
  public static final PlateForces NONE = new PlateForces(0, 0, 0, 0, 0);

  /** This plus {@code factor} times the other. */
  public PlateForces plus(double factor, PlateForces other) {
    return new PlateForces(
        mx + factor * other.mx,
        my + factor * other.my,
        mxy + factor * other.mxy,
        qx + factor * other.qx,
        qy + factor * other.qy);
  }

  /** Principal moments. */
  public PlatePrincipal principalMoments() {
    return PlatePrincipal.of(mx, my, mxy);
  }

  /**
   * Stresses σx, σy, τxy of a solid plate of thickness h on its lower face, 6 M / h²; the upper
   * face has their opposites. MPa.
   */
  public double[] lowerFaceStresses(double h) {
    double f = 6 / (h * h);
    return new double[] {f * mx, f * my, f * mxy};
  }

  /** Principal stresses of a solid plate of thickness h on its lower face, MPa. */
  public PlatePrincipal principalStresses(double h) {
    double[] s = lowerFaceStresses(h);
    return PlatePrincipal.of(s[0], s[1], s[2]);
  }

  /** Largest transverse shear stresses τxz, τyz of a solid plate, 3 Q / 2 h at its middle, MPa. */
  public double[] shearStresses(double h) {
    return new double[] {1.5 * qx / h, 1.5 * qy / h};
  }
}
