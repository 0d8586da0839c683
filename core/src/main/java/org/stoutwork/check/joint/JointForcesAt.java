package org.stoutwork.check.joint;

import java.util.List;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.joint.setting.JointForces;

/** The forces on a joint, from the end of the member that ends in it. */
final class JointForcesAt {

  private JointForcesAt() {}

  /**
   * The forces on a joint. For a leg the sense of the moment is not known beforehand (either
   * shoulder may be pressed), so both are tried.
   */
  static List<JointForces> both(JointSpot spot, double[] f) {
    JointForces forces = new JointForces(f[0], f[1], f[2], f[3], f[4], f[5]);
    if (!spot.upright()) {
      return List.of(forces);
    }
    return List.of(forces, new JointForces(f[0], f[1], f[2], -f[3], f[4], f[5]));
  }

  /** Axial (tension positive), shear, shear across, moment, moment in plan, torsion. */
  static double[] raw(JointSpot spot, FrameResult result) {
    MemberResult member = result.member(spot.member());
    double[] end = spot.atStart() ? member.start() : member.end();
    int sign = spot.atStart() ? -1 : 1;
    double axial = sign * end[0];
    if (spot.upright()) {
      return new double[] {axial, end[1], end[2], sign * end[5], sign * end[4], sign * end[3]};
    }
    return new double[] {axial, end[2], end[1], sign * end[4], sign * end[5], sign * end[3]};
  }
}
