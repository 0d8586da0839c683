package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.glue.GrainShares;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.ShoulderTurning;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Mortise and tenon: glue, shoulder and post; root, edges and horn are those of any tenon. */
final class TenonCapacity {

  /** Height of crossed glue beyond which the seasons work it loose, mm. */
  private static final double LARGEST_CROSSED = 100;

  private static final Formula ALL_CHEEKS =
      Formula.define("A_g")
          .meaning("area of all cheeks that count")
          .unit(Unit.MM2)
          .where("n", "number of tenons", Unit.ONE)
          .where("A_1", "both cheeks of one", Unit.MM2)
          .as("n*A_1")
          .source(Source.derived("geometry"));

  private static final Formula ALL_ARMS =
      Formula.define("R")
          .meaning("sum of distances for all tenons")
          .unit(Unit.MM3)
          .where("n", "number of tenons", Unit.ONE)
          .where("R_O", "of one", Unit.MM3)
          .as("n*R_O")
          .source(Source.derived("geometry"));

  private static final Formula CHEEKS_LEFT =
      Formula.define("A_g")
          .meaning("area of cheeks less the bore of a bolt that crosses them")
          .unit(Unit.MM2)
          .where("A_0", "area before", Unit.MM2)
          .where("n", "number of tenons", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .as("A_0 - 2*n*π*D^2/4")
          .source(Source.derived("geometry"));

  private static final Formula ARMS_LEFT =
      Formula.define("R")
          .meaning("sum of distances less that of a bore that crosses the cheeks")
          .unit(Unit.MM3)
          .where("R_0", "sum before", Unit.MM3)
          .where("n", "number of tenons", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .where("x", "distance of the bore from the shoulder", Unit.MM)
          .where("y", "height of the bore above the rail's pressed edge", Unit.MM)
          .as("R_0 - 2*n*π*D^2/4*sqrt(x^2 + y^2)")
          .source(Source.derived("geometry: the middle of the bore for all of it"));

  private static final Formula TOGETHER =
      Formula.define("u_g")
          .meaning("moment, pull and shear on one glue line, added straight")
          .where("M", "moment", Unit.N_MM)
          .where("M_R", "moment capacity", Unit.N_MM)
          .where("N", "pull", Unit.N)
          .where("V", "shear", Unit.N)
          .where("T_R", "pull or shear capacity", Unit.N)
          .as("M/M_R + N/T_R + V/T_R")
          .source(Source.derived("straight-line interaction, on the safe side"));

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
  private final double glued;

  TenonCapacity(MortiseAndTenon joint, Case with) {
    this.joint = joint;
    this.with = with;
    this.forces = with.forces();
    this.members = with.members();
    this.length = joint.lengthInPost(members);
    this.glued = Math.min(joint.height(), LARGEST_CROSSED);
  }

  void all() {
    boolean held = joint.fit().glued();
    if (held) {
      glueMoment();
      withdrawal();
      glueTogether();
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
    splitting(held);
    if (with.post().fT90() > 0) {
      cheeks();
    }
    if (joint.fit() instanceof Fit.Pegged pegged) {
      new PegCapacity(with, pegged, peggedTenon()).all();
    } else if (joint.fit() instanceof Fit.Wedged wedged) {
      WedgeCapacity.all(joint, wedged, with);
    }
  }

  private PegCapacity.Tenon peggedTenon() {
    return new PegCapacity.Tenon(
        joint.height(),
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

  private double arms(Pad pad) {
    double s = shoulderPressed();
    if (joint.height() > LARGEST_CROSSED) {
      pad.remark("Crossed glue above 100 mm works loose with the seasons: 100 mm are counted.");
    }
    if (joint.height() > 50 || length > 50) {
      pad.remark("Tested with tenons of 38 × 32 mm; larger ones are extrapolated.");
    }
    double one =
        joint
            .haunch()
            .map(
                x ->
                    ShoulderTurning.armsHaunched(
                        pad, length, glued, s, x.length(), x.height(), forces.moment() >= 0))
            .orElseGet(() -> ShoulderTurning.arms(pad, length, s, s + glued));
    double all = pad.take(ALL_ARMS, joint.count(), one);
    for (CrossedTenon.Slot slot : crossed().slots()) {
      double middle = forces.moment() >= 0 ? slot.middle() : -slot.middle();
      double up = s + joint.height() / 2 + middle;
      all = pad.take(ARMS_LEFT, all, joint.count(), slot.diameter(), slot.fromShoulder(), up);
    }
    return Math.max(0, all);
  }

  private CrossedTenon crossed() {
    return CrossedTenon.of(
        joint.thickness(), joint.height(), joint.shoulderBelow(), length, with.setting().crossed());
  }

  private double momentCapacity(Pad pad) {
    if (pad.keepsLines()) {
      shares(pad);
    }
    return GlueTurning.plastic(pad, with.crossedGlue(pad), arms(pad));
  }

  private void shares(Pad pad) {
    GrainShares.tenon(
        pad,
        joint.count(),
        joint.height(),
        joint.thickness(),
        length,
        members.railDepth(),
        members.railThickness(),
        joint.through());
  }

  private double pullCapacity(Pad pad) {
    double area = pad.take(ALL_CHEEKS, joint.count(), ShoulderTurning.area(pad, glued, length));
    for (CrossedTenon.Slot slot : crossed().slots()) {
      area = pad.take(CHEEKS_LEFT, area, joint.count(), slot.diameter());
    }
    return Splitting.gluePull(pad, with.crossedGlue(pad), Math.max(0, area));
  }

  private void glueMoment() {
    with.limits()
        .strength(
            "glue line under moment",
            "glue line",
            forces.moment(),
            Unit.N_MM,
            this::momentCapacity);
  }

  private void withdrawal() {
    with.limits()
        .strength(
            "withdrawal of the glued cheeks",
            "glue line",
            forces.tension(),
            Unit.N,
            pad -> {
              if (pad.keepsLines()) {
                shares(pad);
              }
              return pullCapacity(pad);
            });
  }

  private void glueTogether() {
    with.limits()
        .strength(
            "glue line under moment, pull and shear together",
            "glue line",
            Unit.ONE,
            pad ->
                pad.take(
                    TOGETHER,
                    Math.abs(forces.moment()),
                    momentCapacity(pad),
                    forces.tension(),
                    Math.abs(forces.shear()),
                    pullCapacity(pad)),
            pad -> 1);
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
                return pullCapacity(pad);
              }
              pad.remark("Nothing holds a dry tenon down in a mortise that is open above.");
              return 0;
            });
  }

  private void splitting(boolean held) {
    if (!held && !(joint.fit() instanceof Fit.Pegged)) {
      return;
    }
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
