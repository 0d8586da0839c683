package org.stoutwork.joint.stiffness;

import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.bolted.BedBolt;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.working.Pad;

/** A stub tenon drawn up by bed bolts. */
final class BoltedStiffness {

  private BoltedStiffness() {}

  static JointStiffness of(BoltedTenon joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    double above = m.railDepth() - joint.height() - joint.shoulderBelow();
    double narrower = Math.min(joint.shoulderBelow(), above);
    ShoulderSpring.Pressed pressed =
        ShoulderSpring.of(
            pad, m.railDepth(), m.railThickness(), joint.height(), joint.thickness(), narrower, e);
    double grip = joint.gripLength(m, setting.rod());
    double bolt = BedBolt.bolt(pad, joint.bolt().size().stressArea(), grip);
    double k = rotation(joint, m, pad, pressed, bolt);
    boolean tight = joint.preload() > 0;
    Range inPlane = tight ? Range.of(k, 0.3, 0.6, 1) : Range.of(k, 0, 0.3, 1);
    double pull = joint.bolts() * bolt;
    double edge = ShoulderSpring.halfPlane(pad, setting.rail(), setting.railDepth());
    double push = ShoulderSpring.bearing(pad, edge, joint.thickness() * joint.length());
    return new Six(
            tight ? Range.of(pull, 0.3, 0.6, 1) : Range.of(pull, 0.1, 0.4, 1),
            Range.of(push, 0.5, 1, 2),
            Range.of(push, 0.25, 0.5, 1),
            inPlane,
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(pad, reason(tight), 0);
  }

  private static String reason(boolean tight) {
    return tight
        ? "high: bolt and shoulder alone give; mean and low: washer and nut bed into the wood and"
            + " the shoulder is rough (0.6 and 0.3, judgement)"
        : "low: the bolt has worked loose and the joint turns freely; high: as tightened";
  }

  private static double rotation(
      BoltedTenon joint, Joint.Members m, Pad pad, ShoulderSpring.Pressed pressed, double bolt) {
    if (joint.bolts() == 1) {
      double z = BedBolt.lever(pad, m.railDepth(), 0, pressed.depth());
      return BedBolt.rotation(pad, z, bolt, pressed.bearing());
    }
    double far = BedBolt.lever(pad, m.railDepth(), joint.spacing() / 2, pressed.depth());
    double near = BedBolt.lever(pad, m.railDepth(), -joint.spacing() / 2, pressed.depth());
    return BedBolt.rotation(pad, far, near, bolt, pressed.bearing());
  }
}
