package org.stoutwork.assembly;

import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.stiffness.SpringSet;

/** Lays the springs of a joint into the local axes of the member that ends in it. */
final class Springs {

  /** Part of its mean that a spring keeps where the frame would be loose without it. */
  static final double PROP = 1e-3;

  private Springs() {}

  /** The softest springs, none of them nought that is something at the mean. */
  static SpringSet propped(JointStiffness stiffness) {
    SpringSet low = stiffness.low();
    SpringSet mean = stiffness.mean();
    return new SpringSet(
        propped(low.axial(), mean.axial()),
        propped(low.shear(), mean.shear()),
        propped(low.shearAcross(), mean.shearAcross()),
        propped(low.rotInPlane(), mean.rotInPlane()),
        propped(low.rotVertical(), mean.rotVertical()),
        propped(low.torsion(), mean.torsion()));
  }

  private static double propped(double low, double mean) {
    return low == 0 ? PROP * mean : low;
  }

  /**
   * The end of a level piece: it bends up and down about its local y.
   *
   * @param arm from the node to the shoulder
   */
  static MemberEnd level(SpringSet k, Vec3 arm) {
    return MemberEnd.RIGID
        .offset(arm)
        .with(Direction.UX, of(k.axial()))
        .with(Direction.UY, of(k.shearAcross()))
        .with(Direction.UZ, of(k.shear()))
        .with(Direction.RX, of(k.torsion()))
        .with(Direction.RY, of(k.rotInPlane()))
        .with(Direction.RZ, of(k.rotVertical()));
  }

  /**
   * The end of a leg in a foot or under a rail: the plane of the end frame is its local x-y plane.
   *
   * @param arm from the node to the shoulder
   */
  static MemberEnd upright(SpringSet k, Vec3 arm) {
    return MemberEnd.RIGID
        .offset(arm)
        .with(Direction.UX, of(k.axial()))
        .with(Direction.UY, of(k.shear()))
        .with(Direction.UZ, of(k.shearAcross()))
        .with(Direction.RX, of(k.torsion()))
        .with(Direction.RY, of(k.rotVertical()))
        .with(Direction.RZ, of(k.rotInPlane()));
  }

  private static EndCondition of(double stiffness) {
    return Double.isInfinite(stiffness) ? EndCondition.RIGID : EndCondition.elastic(stiffness);
  }
}
