package org.stoutwork.joint.stiffness;

import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/** Joints held by screws: how far screws slip across their shank and give along it. */
final class ScrewStiffness {

  /** Half and twice the slip modulus, as for pegs. */
  private static final double[] SLIP = {0.5, 1, 2};

  /** A thread in end grain against one in side grain. */
  private static final double[] END_GRAIN = {0.25, 0.5, 1};

  private ScrewStiffness() {}

  private static Range range(double k, double[] factors) {
    return Range.of(k, factors[0], factors[1], factors[2]);
  }

  /** Length of thread beyond the piece under the heads, mm. */
  private static double thread(Screw screw, double through) {
    return Math.max(0, Math.min(screw.bite(), screw.length() - through - screw.tip()));
  }

  private static double slip(ScrewSet set, JointSetting setting, Pad pad) {
    double density = Slip.density(pad, setting.rail().meanDensity(), setting.post().meanDensity());
    return Slip.dowel(pad, density, set.screw().diameter());
  }

  static JointStiffness lap(HalfLap joint, ScrewSet set, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double one = slip(set, setting, pad);
    double squares = set.squares(m.postDepth(), m.railDepth());
    pad.given("S_r", "sum of squared distances", squares, Unit.MM2, Source.derived("geometry"));
    double turning = squares == 0 ? 0 : Slip.rotation(pad, 1, one, squares);
    double d = set.screw().diameter();
    double pulled = set.count() * Slip.pulled(pad, d, thread(set.screw(), joint.railPart()));
    Range along = range(set.count() * one, SLIP);
    return new Six(
            along,
            along,
            range(pulled, SLIP),
            range(turning, SLIP),
            Six.sidewaysDry(turning),
            Six.sidewaysDry(turning))
        .joint(
            pad,
            "slip modulus of screws, half of it and twice it (judgement); one screw is a pin",
            0);
  }

  /** Screws in the end of a rail, drawn along its grain. */
  static Range pulledFromEnd(ScrewSet set, double through, Pad pad) {
    double one = Slip.pulled(pad, set.screw().diameter(), thread(set.screw(), through));
    return range(set.count() * one, END_GRAIN);
  }

  static JointStiffness butt(ScrewedButt joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    ScrewSet set = joint.screws();
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    ShoulderSpring.Pressed pressed =
        ShoulderSpring.of(pad, m.railDepth(), m.railThickness(), 0, 0, m.railDepth() / 2, e);
    double one = Slip.pulled(pad, set.screw().diameter(), thread(set.screw(), m.postDepth()));
    double k = DowelStiffness.couple(pad, set.heights(m.railDepth()), pressed, one);
    Range shear = range(set.count() * slip(set, setting, pad), END_GRAIN);
    return new Six(
            pulledFromEnd(set, m.postDepth(), pad),
            shear,
            shear,
            Range.of(k, 0, 0.5, 1),
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(
            pad,
            "threads along the grain work loose: low as a pin, mean half of what threads in side"
                + " grain give (judgement)",
            0);
  }
}
