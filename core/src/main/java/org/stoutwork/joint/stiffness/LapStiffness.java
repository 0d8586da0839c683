package org.stoutwork.joint.stiffness;

import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Half-laps: one glued face that twists in its own plane. */
final class LapStiffness {

  private static final Formula ONE_FACE =
      Formula.define("K_lap")
          .meaning("rotational stiffness of one glued face, half of a tenon's two, in an open slot")
          .unit(Unit.N_MM_PER_RAD)
          .where("K_ck", "the same as a tenon with two cheeks", Unit.N_MM_PER_RAD)
          .as("0.6*K_ck/2")
          .source(TenonSpring.RULE);

  private LapStiffness() {}

  static JointStiffness of(HalfLap joint, JointSetting setting, Pad pad) {
    return joint.screws().isPresent() && !joint.glued()
        ? ScrewStiffness.lap(joint, joint.screws().get(), setting, pad)
        : held(joint, setting, pad);
  }

  private static JointStiffness held(HalfLap joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double post = joint.postPart(m);
    double ks =
        TenonSpring.slip(
            pad,
            setting.glue().slipStiffness(),
            2 * joint.railPart(),
            setting.rail().gLT(),
            post,
            setting.post().gRT());
    double full =
        TenonSpring.cheeks(
            pad,
            1,
            ks,
            m.railDepth(),
            joint.railPart(),
            m.postDepth(),
            setting.rail().eL(),
            m.railThickness());
    double k = pad.take(ONE_FACE, full);
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    double contact = ShoulderSpring.bearing(pad, e, joint.railPart() * m.railDepth());
    Range push = joint.glued() ? Range.of(contact, 0.3, 1, 2) : Range.of(contact, 0.1, 0.5, 1);
    Range inPlane = joint.glued() ? Range.of(k, 0.25, 0.6, 1.3) : Range.of(k, 0, 0, 0.1);
    Range side = joint.glued() ? Six.sidewaysGlued(k) : Six.sidewaysDry(k);
    return new Six(push, push, push.times(0.5), inPlane, side, side)
        .joint(
            pad,
            "no solid model of a lap was run: the rule of the bridle with one glued face, with"
                + " wider factors (0.25, 0.6, 1.3, judgement)",
            0);
  }
}
