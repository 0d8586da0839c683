package org.stoutwork.joint.setting;

/**
 * Forces of the rail on the joint, at the shoulder, in the rail's axes.
 *
 * @param axial N; above 0 pulls the rail out
 * @param shear N, in the plane of the frame; above 0 presses the tenon on the end of the mortise
 *     below it, as a loaded rail does
 * @param shearAcross N, out of the plane of the frame
 * @param moment N·mm, in the plane of the frame; above 0 presses the shoulder below the tenon
 * @param momentVertical N·mm, of the rail in plan
 * @param torsion N·mm, about the rail's axis
 */
public record JointForces(
    double axial,
    double shear,
    double shearAcross,
    double moment,
    double momentVertical,
    double torsion) {

  /** The part of the axial force that pulls out, N. */
  public double tension() {
    return Math.max(0, axial);
  }

  /** The part of the axial force that pushes in, N. */
  public double compression() {
    return Math.max(0, -axial);
  }
}
