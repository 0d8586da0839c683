package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Mortise and tenon: shoulder and post; root, edges and horn are those of any tenon. */
final class TenonCapacity {

  private static final Formula SHARE =
      Formula.define("M_sh")
          .meaning("part of the moment that presses the shoulder, the cheeks taking the rest")
          .unit(Unit.N_MM)
          .where("M", "moment", Unit.N_MM)
          .where("K_sh", "stiffness of the shoulder", Unit.N_MM_PER_RAD)
          .where("K_ck", "stiffness of the cheeks", Unit.N_MM_PER_RAD)
          .as("M*K_sh/(K_sh + K_ck)")
          .source(Source.derived("springs side by side"));

  private final MortiseAndTenon joint;
  private final Case with;
  private final JointForces forces;
  private final Joint.Members members;
  private final double length;

  TenonCapacity(MortiseAndTenon joint, Case with) {
    this.joint = joint;
    this.with = with;
    this.forces = with.forces();
    this.members = with.members();
    this.length = joint.lengthInPost(members);
  }

  void all() {
    boolean held = joint.fit().glued();
    if (held) {
      glue().all();
    }
    shoulder();
    new TenonRoot(
            with,
            BoredTenon.sound(joint.thickness() * joint.count(), joint.height()),
            length,
            joint.shoulderBelow(),
            joint.shoulderAbove(members),
            joint.mortiseWidth(),
            joint.haunch())
        .all(!held && !(joint.fit() instanceof Fit.Pegged), true);
    lifting(held);
    if (held) {
      splitting();
    }
    cheeks();
    if (joint.fit() instanceof Fit.Pegged pegged) {
      new PegCapacity(with, pegged, peggedTenon()).all();
    } else if (joint.fit() instanceof Fit.Wedged wedged) {
      WedgeCapacity.all(joint, wedged, with);
    }
  }

  private TenonGlue glue() {
    return new TenonGlue(joint, with, shoulderPressed());
  }

  private PeggedTenon peggedTenon() {
    return new PeggedTenon(
        joint.height(),
        joint.shoulderBelow(),
        joint.thickness(),
        joint.count(),
        length,
        joint.cheek(members),
        shoulderPressed());
  }

  private double shoulderPressed() {
    return forces.moment() >= 0
        ? joint.shoulderBelow()
        : Math.max(0, joint.shoulderAbove(members) - with.setting().proud());
  }

  private void shoulder() {
    double whole =
        members.railDepth() * members.railThickness() - joint.height() * joint.mortiseWidth();
    with.limits()
        .strength(
            "shoulder crushing the post",
            "shoulder",
            Unit.MPA,
            pad -> {
              ShoulderSpring.Pressed pressed = pressed(pad);
              return Bearing.shoulder(
                  pad,
                  shoulderMoment(pad, pressed.rotation()),
                  pressed.lever(),
                  with.evenly(pad, members.railDepth() / 3, members.railDepth()),
                  forces.compression(),
                  pressed.area(),
                  Math.max(whole, pressed.area()));
            },
            pad -> with.shoulderBearing(pad, members.railDepth() / 3));
  }

  private ShoulderSpring.Pressed pressed(Pad pad) {
    JointSetting setting = with.setting();
    return ShoulderSpring.of(
        pad,
        members.railDepth(),
        members.railThickness(),
        joint.height(),
        joint.mortiseWidth(),
        shoulderPressed(),
        ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace()));
  }

  /** The shoulder's part of the moment: shared with glue, all of it with pegs, none when dry. */
  private double shoulderMoment(Pad pad, double shoulder) {
    double moment = Math.abs(forces.moment());
    if (!joint.fit().glued()) {
      return joint.fit() instanceof Fit.Pegged ? moment : 0;
    }
    JointSetting setting = with.setting();
    double ks =
        TenonSpring.slip(
            pad,
            setting.glue().slipStiffness(),
            joint.thickness(),
            setting.rail().gLT(),
            joint.cheek(members),
            setting.post().gRT());
    double cheeks =
        TenonSpring.cheeks(
            pad,
            joint.count(),
            ks,
            joint.height(),
            joint.thickness(),
            length,
            setting.rail().eL(),
            members.railThickness());
    return pad.take(SHARE, moment, shoulder, cheeks);
  }

  private void cheeks() {
    with.limits()
        .strength(
            "cheek of the mortise splitting off",
            "post",
            forces.shearAcross(),
            Unit.N,
            pad ->
                with.setting().openAbove()
                    ? Splitting.openCheeks(
                        pad, with.post().fT90(), joint.cheek(members), joint.height())
                    : Splitting.cheeks(
                        pad, with.post().fT90(), joint.cheek(members), joint.height()));
  }

  /** Above an open mortise no wood of the post holds the rail down: glue must, or pegs. */
  private void lifting(boolean held) {
    if (!with.setting().openAbove() || (joint.fit() instanceof Fit.Pegged && !held)) {
      return;
    }
    with.limits()
        .strength(
            "rail lifting out of its open mortise",
            "joint",
            Math.max(0, -forces.shear()),
            Unit.N,
            pad -> {
              if (held) {
                return glue().pullCapacity(pad);
              }
              pad.remark("Nothing holds a dry tenon down in a mortise that is open above.");
              return 0;
            });
  }

  private void splitting() {
    double reach = Math.min(length, members.postDepth() - 1);
    double width =
        joint.through() ? members.postThickness() - joint.mortiseWidth() : members.postThickness();
    with.limits()
        .strength(
            "post splitting across the grain",
            "post",
            forces.tension(),
            Unit.N,
            pad ->
                Splitting.force(
                    pad, with.family(), with.post().fV(), width, reach, members.postDepth()));
  }
}
