package org.stoutwork.joint.stiffness;

import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.peg.PegSpring;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonForces;
import org.stoutwork.joint.tenon.TenonLevels;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Open and corner bridles: a tenon of the rail's full depth in a slot without ends. */
final class BridleStiffness {

  private static final Formula OPEN_SLOT =
      Formula.define("K_b")
          .meaning("rotational stiffness with the slot open at the end")
          .unit(Unit.N_MM_PER_RAD)
          .where("K", "the same as a tenon", Unit.N_MM_PER_RAD)
          .as("0.6*K")
          .source(TenonSpring.RULE);

  private BridleStiffness() {}

  static JointStiffness of(Bridle joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    ShoulderSpring.Pressed pressed =
        ShoulderSpring.of(
            pad, m.railDepth(), m.railThickness(), m.railDepth(), joint.slotWidth(), 0, e);
    if (joint.fit().glued()) {
      return glued(joint, setting, pad, pressed);
    }
    return joint.fit() instanceof Fit.Pegged pegged
        ? pegged(joint, pegged, setting, pad, pressed)
        : loose(joint, setting, pad, pressed);
  }

  private static JointStiffness glued(
      Bridle joint, JointSetting setting, Pad pad, ShoulderSpring.Pressed pressed) {
    Joint.Members m = setting.members();
    double kg = setting.glue().slipStiffness();
    double cheek = joint.cheek(m);
    double ks =
        TenonSpring.slip(
            pad, kg, joint.thickness(), setting.rail().gLT(), cheek, setting.post().gRT());
    double full =
        TenonSpring.cheeks(
            pad,
            joint.count(),
            ks,
            m.railDepth(),
            joint.thickness(),
            m.postDepth(),
            setting.rail().eL(),
            m.railThickness());
    double ck = pad.take(OPEN_SLOT, full);
    double sh = pad.take(OPEN_SLOT, pressed.rotation());
    Range inPlane =
        new Range(
            TenonLevels.low(pad, ck), TenonLevels.mean(pad, ck, sh), TenonLevels.high(pad, ck, sh));
    double pulled = pull(joint, setting, pad);
    Range push = Range.of(TenonForces.pushed(pad, joint.count(), m.railDepth()), 0.1, 0.65, 1.2);
    return new Six(
            Range.of(pulled, 0.2, 0.6, 1.1),
            push,
            push.times(0.5),
            inPlane,
            Six.sidewaysGlued(ck + sh),
            Six.sidewaysGlued(ck + sh))
        .joint(
            pad,
            TenonLevels.GLUED_REASON + "; the share of an open slot rests on a single shape",
            0);
  }

  private static double pull(Bridle joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    return TenonForces.pulled(
        pad,
        joint.count(),
        setting.glue().slipStiffness(),
        m.railDepth(),
        joint.thickness(),
        m.postDepth(),
        setting.rail().gLT(),
        joint.cheek(m),
        setting.post().gRT(),
        setting.rail().eL());
  }

  private static JointStiffness loose(
      Bridle joint, JointSetting setting, Pad pad, ShoulderSpring.Pressed pressed) {
    Joint.Members m = setting.members();
    double contact = pressed.bearing();
    Range push = Range.of(contact, 0.1, 0.5, 1);
    double cheekPlane = contact * m.railDepth() * m.railDepth() / 12;
    return new Six(
            push,
            push,
            push,
            new Range(0, 0, 0),
            Range.of(cheekPlane, 0, 0.05, 0.3),
            Range.of(cheekPlane, 0, 0.05, 0.3))
        .joint(pad, joint.title() + " without peg or glue turns freely in its slot", 0);
  }

  private static JointStiffness pegged(
      Bridle joint, Fit.Pegged fit, JointSetting setting, Pad pad, ShoulderSpring.Pressed pressed) {
    double density = Slip.density(pad, fit.peg().wood().density(), setting.post().meanDensity());
    double one =
        PegSpring.pulled(
            pad, fit.peg(), joint.thickness(), joint.cheek(setting.members()), density);
    double pegs = fit.pegs() * joint.count() * one;
    double k = PegSpring.rotation(pad, pressed.lever(), pegs, pressed.bearing());
    Range push = Range.of(pegs, 0.5, 1, 2);
    return new Six(
            push,
            push,
            push,
            new Range(0, 0.5 * k, 1.4 * k),
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(
            pad,
            "low: the joint acts as a pin; mean: half of peg and shoulder; high: both in full",
            0);
  }
}
