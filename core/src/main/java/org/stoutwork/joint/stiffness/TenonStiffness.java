package org.stoutwork.joint.stiffness;

import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.peg.PegSpring;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonForces;
import org.stoutwork.joint.tenon.TenonLevels;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.working.Pad;

/**
 * Mortise and tenon in all its fits. A moment may turn either way, so the mean counts the weaker of
 * the two shoulders and the high the stronger.
 */
final class TenonStiffness {

  /** Share of the closed glued stiffness that friction in a clamped shoulder can reach. */
  private static final double CLAMPED = 0.8;

  /** What one peg with the tenon's edges reaches against the sum of both, from solid models. */
  private static final double PEG_AND_EDGES = 1.15;

  private final MortiseAndTenon joint;
  private final JointSetting setting;
  private final Joint.Members members;
  private final Pad pad;
  private final double length;
  private final double halfPlane;

  private TenonStiffness(MortiseAndTenon joint, JointSetting setting, Pad pad) {
    this.joint = joint;
    this.setting = setting;
    this.members = setting.members();
    this.pad = pad;
    this.length = joint.lengthInPost(members);
    this.halfPlane = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
  }

  static JointStiffness of(MortiseAndTenon joint, JointSetting setting, Pad pad) {
    TenonStiffness t = new TenonStiffness(joint, setting, pad);
    if (joint.fit().glued()) {
      return t.glued();
    }
    if (joint.fit() instanceof Fit.Pegged pegged) {
      return t.pegged(pegged);
    }
    return joint.fit() instanceof Fit.Dry dry ? t.dry(dry.play()) : t.wedged();
  }

  private double cheeks() {
    double ks =
        TenonSpring.slip(
            pad,
            setting.glue().slipStiffness(),
            joint.thickness(),
            setting.rail().gLT(),
            joint.cheek(members),
            setting.post().gRT());
    double h = joint.height() + joint.haunch().map(x -> x.height() / 2).orElse(0.0);
    if (joint.haunch().isPresent()) {
      pad.remark("The tenon height counts half the haunch.");
    }
    return TenonSpring.cheeks(
        pad,
        joint.count(),
        ks,
        h,
        joint.thickness(),
        length,
        setting.rail().eL(),
        members.railThickness());
  }

  /** Shoulder above the tenon that meets the post. */
  private double above() {
    return Math.max(0, joint.shoulderAbove(members) - setting.proud());
  }

  private ShoulderSpring.Pressed shoulder(double width) {
    return ShoulderSpring.of(
        pad,
        members.railDepth(),
        members.railThickness(),
        joint.height(),
        joint.mortiseWidth(),
        width,
        halfPlane);
  }

  private JointStiffness glued() {
    double ck = cheeks();
    double below = shoulder(joint.shoulderBelow()).rotation();
    double above = shoulder(above()).rotation();
    double weaker = Math.min(below, above);
    double stronger = Math.max(below, above);
    Range inPlane =
        new Range(
            TenonLevels.low(pad, ck),
            TenonLevels.mean(pad, ck, weaker),
            TenonLevels.high(pad, ck, stronger));
    double closed = ck + stronger;
    Range pull = Range.of(gluedPull(), 0.3, 0.8, 1.5);
    Range push = Range.of(TenonForces.pushed(pad, joint.count(), joint.height()), 0.1, 0.75, 1.4);
    return new Six(
            pull,
            push,
            push.times(0.5),
            inPlane,
            Six.sidewaysGlued(closed),
            Six.sidewaysGlued(closed))
        .joint(pad, TenonLevels.GLUED_REASON + outside(), 0);
  }

  /** Says so if the joint lies outside the models that the rule was fitted to. */
  private String outside() {
    double share = joint.thickness() / members.railThickness();
    boolean inside =
        share >= 0.295
            && share <= 0.505
            && joint.height() >= 0.5 * members.railDepth()
            && length >= 28
            && joint.count() == 1;
    return inside
        ? ""
        : "; outside the modelled range (one tenon, t 0.3 to 0.5 of the rail, h at least half its"
            + " depth, l at least 28 mm)";
  }

  private double gluedPull() {
    return TenonForces.pulled(
        pad,
        joint.count(),
        setting.glue().slipStiffness(),
        joint.height(),
        joint.thickness(),
        length,
        setting.rail().gLT(),
        joint.cheek(members),
        setting.post().gRT(),
        setting.rail().eL());
  }

  /** Edges press at the upper and lower ends of the mortise; an open one has no upper end. */
  private double edges() {
    if (setting.openAbove()) {
      pad.remark("The mortise is open at the end of the post: the tenon's edges hold nothing.");
      return 0;
    }
    return TenonSpring.dry(
        pad,
        joint.count(),
        joint.thickness(),
        length,
        setting.rail().eL(),
        setting.rail().across(setting.railDepth()));
  }

  /** Bearing of the whole shoulder, for a rail that is pushed. */
  private double pushedShoulder() {
    double area =
        members.railDepth() * members.railThickness() - joint.height() * joint.mortiseWidth();
    return ShoulderSpring.bearing(pad, halfPlane, area);
  }

  /** Bearing of the tenon's edge on the mortise end, for a rail that is loaded. */
  private Range edgeBearing() {
    double across = ShoulderSpring.halfPlane(pad, setting.rail(), setting.railDepth());
    double area = joint.count() * joint.thickness() * length;
    return Range.of(ShoulderSpring.bearing(pad, across, area), 0.5, 1, 2);
  }

  private JointStiffness dry(double play) {
    double k = edges();
    Range inPlane = new Range(0, TenonLevels.dryMean(pad, k), TenonLevels.dryHigh(pad, k));
    pad.remark("Nothing holds a dry tenon against pulling out; its spring is that of contact.");
    Range push = edgeBearing();
    return new Six(
            Range.of(pushedShoulder(), 0.1, 0.5, 1),
            push,
            push.times(0.5),
            inPlane,
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(pad, TenonLevels.DRY_REASON, TenonSpring.freeRotation(pad, play, length));
  }

  private JointStiffness wedged() {
    double k = edges();
    double clamped = CLAMPED * closedAsIfGlued();
    Range inPlane = new Range(0, TenonLevels.dryMean(pad, k), Math.max(1.2 * k, clamped));
    Range push = edgeBearing();
    return new Six(
            Range.of(gluedPull(), 0.1, 0.4, 1),
            push,
            push.times(0.5),
            inPlane,
            Six.sidewaysDry(clamped),
            Six.sidewaysDry(clamped))
        .joint(
            pad,
            "low: the wedge has eased and the tenon turns freely; mean: half a tight dry fit;"
                + " high: the wedge keeps the shoulder clamped and friction holds it",
            0);
  }

  private double closedAsIfGlued() {
    double wider = Math.max(joint.shoulderBelow(), above());
    return cheeks() + shoulder(wider).rotation();
  }

  private JointStiffness pegged(Fit.Pegged fit) {
    double cheek = joint.cheek(members);
    double density = Slip.density(pad, fit.peg().wood().density(), setting.post().meanDensity());
    double one = PegSpring.pulled(pad, fit.peg(), joint.thickness(), cheek, density);
    double pegs = fit.pegs() * joint.count() * one;
    double narrower = Math.min(joint.shoulderBelow(), above());
    ShoulderSpring.Pressed pressed = shoulder(narrower);
    double opened = PegSpring.rotation(pad, pressed.lever(), pegs, pressed.bearing());
    double k = PEG_AND_EDGES * (opened + edges());
    double high = fit.drawbored() ? Math.max(1.2 * k, CLAMPED * closedAsIfGlued()) : 1.2 * k;
    Range push = edgeBearing();
    return new Six(
            Range.of(pegs, 0.5, 1, 2),
            push,
            push.times(0.5),
            new Range(0, 0.5 * k, high),
            Six.sidewaysDry(k),
            Six.sidewaysDry(k))
        .joint(
            pad,
            fit.drawbored()
                ? "low: the peg has relaxed and the joint acts as a pin; mean: half of peg, shoulder"
                    + " and edges; high: the drawn shoulder stays closed and friction holds it"
                : "low: the joint acts as a pin; mean: half of peg, shoulder and edges; high: both"
                    + " in full, stiff wood",
            0);
  }
}
