package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.glue.GrainShares;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.tenon.ShoulderTurning;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The glued cheeks of a tenon: under moment, under pull, and under all forces together. */
final class TenonGlue {

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

  private final MortiseAndTenon joint;
  private final Case with;
  private final double shoulder;
  private final JointForces forces;
  private final Joint.Members members;
  private final double length;
  private final double glued;

  /**
   * @param shoulder on the pressed side, mm
   */
  TenonGlue(MortiseAndTenon joint, Case with, double shoulder) {
    this.joint = joint;
    this.with = with;
    this.shoulder = shoulder;
    this.forces = with.forces();
    this.members = with.members();
    this.length = joint.lengthInPost(members);
    this.glued = Math.min(joint.height(), LARGEST_CROSSED);
  }

  void all() {
    glueMoment();
    withdrawal();
    glueTogether();
  }

  private double arms(Pad pad) {
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
                        pad, length, glued, shoulder, x.length(), x.height(), forces.moment() >= 0))
            .orElseGet(() -> ShoulderTurning.arms(pad, length, shoulder, shoulder + glued));
    double all = pad.take(ALL_ARMS, joint.count(), one);
    for (CrossedTenon.Slot slot : crossed().slots()) {
      double middle = forces.moment() >= 0 ? slot.middle() : -slot.middle();
      double up = shoulder + joint.height() / 2 + middle;
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

  /** Pull along the rail, or any other shear, that the cheeks take, N. */
  double pullCapacity(Pad pad) {
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
}
