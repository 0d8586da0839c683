package org.stoutwork.joint.stiffness;

import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.peg.PegSpring;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** A through tenon drawn up by a loose wedge behind the post: a couple of wedge and shoulder. */
final class LooseWedgeStiffness {

  private static final Formula DRAWN =
      Formula.define("k_w")
          .meaning("stiffness of the tenon drawn by its wedge")
          .unit(Unit.N_PER_MM)
          .where("E_L", "modulus of the rail along the grain", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("p", "post depth", Unit.MM)
          .where("k_b", "bearing of the wedge on the back of the post", Unit.N_PER_MM)
          .as("1/(p/(E_L*t*h) + 1/k_b)")
          .source(Source.derived("springs in series: tenon stretch and wedge bearing"));

  private LooseWedgeStiffness() {}

  static JointStiffness of(LooseWedgeTenon joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    double above = m.railDepth() - joint.height() - joint.shoulderBelow();
    ShoulderSpring.Pressed pressed =
        ShoulderSpring.of(
            pad,
            m.railDepth(),
            m.railThickness(),
            joint.height(),
            joint.thickness(),
            Math.min(joint.shoulderBelow(), above),
            e);
    double back = ShoulderSpring.bearing(pad, e, joint.height() * 2 * joint.wedgeThickness());
    double drawn =
        pad.take(
            DRAWN, setting.rail().eL(), joint.thickness(), joint.height(), m.postDepth(), back);
    double k = PegSpring.rotation(pad, pressed.lever(), drawn, pressed.bearing());
    double edge = ShoulderSpring.halfPlane(pad, setting.rail(), setting.railDepth());
    double push = ShoulderSpring.bearing(pad, edge, joint.thickness() * m.postDepth());
    return new Six(
            Range.of(drawn, 0.1, 0.4, 1),
            Range.of(push, 0.5, 1, 2),
            Range.of(push, 0.25, 0.5, 1),
            Range.of(k, 0, 0.3, 1),
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(
            pad,
            "low: the wedge has worked loose and the joint turns freely; mean: wedge and shoulder"
                + " bed into each other (0.3, judgement); high: both in full",
            0);
  }
}
