package org.stoutwork.joint.stiffness;

/**
 * The six springs of a joint at the shoulder, in the axes of the rail. Unlimited means rigid.
 *
 * @param axial along the rail, N/mm
 * @param shear along the post, in the plane of the frame, N/mm
 * @param shearAcross out of the plane of the frame, N/mm
 * @param rotInPlane rotation in the plane of the frame, N·mm/rad
 * @param rotVertical rotation of the rail in plan, N·mm/rad
 * @param torsion twist about the rail's axis, N·mm/rad
 */
public record SpringSet(
    double axial,
    double shear,
    double shearAcross,
    double rotInPlane,
    double rotVertical,
    double torsion) {

  /** Checks that no spring is below nought. */
  public SpringSet {
    for (double k : new double[] {axial, shear, shearAcross, rotInPlane, rotVertical, torsion}) {
      if (!(k >= 0)) {
        throw new IllegalArgumentException("a spring cannot be below 0; it was " + k);
      }
    }
  }

  /** Whether no spring is stiffer than the same one of another set. */
  public boolean nowhereStifferThan(SpringSet other) {
    return axial <= other.axial
        && shear <= other.shear
        && shearAcross <= other.shearAcross
        && rotInPlane <= other.rotInPlane
        && rotVertical <= other.rotVertical
        && torsion <= other.torsion;
  }
}
