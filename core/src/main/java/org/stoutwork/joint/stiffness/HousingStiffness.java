package org.stoutwork.joint.stiffness;

import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.working.Pad;

/** A housing: the whole end of the piece bears on the edges of its trench. */
final class HousingStiffness {

  private HousingStiffness() {}

  static JointStiffness of(Housing joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double across = setting.rail().across(setting.railDepth());
    double k =
        TenonSpring.dry(pad, 1, m.railThickness(), joint.depth(), setting.rail().eL(), across);
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    double end = ShoulderSpring.bearing(pad, e, m.railDepth() * m.railThickness());
    double edge = ShoulderSpring.halfPlane(pad, setting.rail(), setting.railDepth());
    double push = ShoulderSpring.bearing(pad, edge, m.railThickness() * joint.depth());
    boolean glued = joint.glued();
    return new Six(
            (glued ? Range.of(end, 0.1, 0.5, 1) : Range.of(end, 0.05, 0.3, 1))
                .plus(
                    joint
                        .screws()
                        .map(set -> ScrewStiffness.pulledFromEnd(set, m.postDepth(), pad))
                        .orElse(Range.NOTHING)),
            Range.of(push, 0.5, 1, 2),
            Range.of(push, 0.25, 0.5, 1),
            glued ? Range.of(k, 0, 0.8, 3) : Range.of(k, 0, 0.5, 1.2),
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(
            pad,
            "low: the end turns freely in its trench; mean and high: edges bear as those of a dry"
                + " tenon"
                + (glued ? ", glue on end grain counted up to 3 times that (judgement)" : ""),
            0);
  }
}
