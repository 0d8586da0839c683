package org.stoutwork.assembly;

import org.stoutwork.bench.BenchJoint;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.stiffness.JointStiffness;

/**
 * A joint where it stands in the model.
 *
 * @param name such as "left top rail into left front leg"
 * @param rail name of the part that ends in it
 * @param kind of the part that ends in it
 * @param post name of the part it meets
 * @param joint kind and sizes
 * @param setting what it connects
 * @param stiffness its range
 * @param member the member whose end it is
 * @param atStart whether it is the start of that member, or its end
 */
public record JointSpot(
    String name,
    String rail,
    PartKind kind,
    String post,
    BenchJoint joint,
    JointSetting setting,
    JointStiffness stiffness,
    String member,
    boolean atStart) {

  /** Whether the piece that ends here is a leg. */
  public boolean upright() {
    return kind == PartKind.LEG;
  }
}
