package org.stoutwork.check.joint;

import java.util.List;
import java.util.Optional;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;

/** Names the joints without a tenon that bolts of others run through: no check looks at them. */
public final class BoltsThroughJoints {

  private BoltsThroughJoints() {}

  /** What was not checked; empty if no bolt runs through such a joint. */
  public static Optional<CheckResult> check(Inquiry inquiry) {
    List<String> names =
        inquiry.at(JointLevel.MEAN).model().joints().stream()
            .filter(BoltsThroughJoints::crossed)
            .map(JointSpot::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CheckResult.NotChecked(
                "bolts-crossing",
                "Bolts through other joints",
                String.join("; ", names),
                Topic.JOINT,
                "a bolt of another joint runs through them in the leg; what its bore takes away"
                    + " there is not looked at, so draw it before you bore"));
  }

  private static boolean crossed(JointSpot spot) {
    Joint joint = spot.joint().joint();
    boolean tenon =
        joint instanceof MortiseAndTenon
            || joint instanceof BoltedTenon
            || joint instanceof LooseWedgeTenon;
    TenonHole hole = TenonHole.of(joint, spot.setting().members());
    return !tenon && spot.setting().crossed().stream().anyMatch(bore -> meets(bore, hole));
  }

  private static boolean meets(CrossBore bore, TenonHole hole) {
    double radius = bore.diameter() / 2;
    return bore.height() + radius > hole.below()
        && bore.height() - radius < hole.below() + hole.height()
        && bore.fromShoulder() - radius < hole.depth();
  }
}
