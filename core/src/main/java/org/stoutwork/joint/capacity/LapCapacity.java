package org.stoutwork.joint.capacity;

import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.glue.GrainShares;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.TenonShear;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Pad;

/** Half-laps and housings. */
final class LapCapacity {

  private LapCapacity() {}

  static void lap(HalfLap joint, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    if (joint.glued()) {
      glue(joint, with, m);
      panels(joint, with, m);
      joint.screws().ifPresent(set -> ScrewedCapacity.pressing(joint, set, with));
    } else if (joint.screws().isPresent()) {
      ScrewedCapacity.lap(joint, joint.screws().get(), with);
    } else {
      with.limits()
          .strength("dry lap turning freely", "joint", f.moment(), Unit.N_MM, LapCapacity::free);
    }
    half(
        "rail breaking at the lap",
        "rail",
        with,
        joint.railPart(),
        m.railDepth(),
        with.rail().fM());
    half(
        "post breaking at the lap",
        "post",
        with,
        joint.postPart(m),
        m.postDepth(),
        with.post().fM());
    cutAway(joint, with);
  }

  private static void panels(HalfLap joint, Case with, Joint.Members m) {
    CrossedPanels panels = new CrossedPanels(with, m.postDepth(), Math.min(m.railDepth(), 100));
    panels.rail(
        new CrossedPanels.Piece(
            "rail's half", "rail", with.rail(), joint.railPart(), m.railDepth()));
    panels.post(
        new CrossedPanels.Piece(
            "post's half", "post", with.post(), joint.postPart(m), m.postDepth()));
  }

  private static void cutAway(HalfLap joint, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    with.limits()
        .strength(
            "rail shearing at the lap",
            "rail",
            f.shear(),
            Unit.N,
            pad ->
                TenonShear.capacity(
                    pad,
                    with.family(),
                    with.rail().fV(),
                    joint.railPart(),
                    m.railDepth(),
                    0,
                    m.postDepth()));
    with.limits()
        .strength(
            "rail splitting where half of it is cut away",
            "rail",
            f.shearAcross(),
            Unit.N,
            pad ->
                TenonShear.capacity(
                    pad,
                    with.family(),
                    with.rail().fV(),
                    m.railDepth(),
                    joint.railPart(),
                    m.railThickness() - joint.railPart(),
                    m.postDepth()));
  }

  static double free(Pad pad) {
    pad.remark("Without glue or fastener a lap is a pin.");
    return 0;
  }

  private static void half(
      String failure, String place, Case with, double thickness, double depth, double fm) {
    with.limits()
        .strength(
            failure,
            place,
            with.forces().moment(),
            Unit.N_MM,
            pad -> TenonShear.rootCapacity(pad, fm, TenonShear.modulus(pad, thickness, depth)));
  }

  private static void glue(HalfLap joint, Case with, Joint.Members m) {
    JointForces f = with.forces();
    double a = m.postDepth();
    double b = Math.min(m.railDepth(), 100);
    with.limits()
        .strength(
            "glue line under moment",
            "glue line",
            f.moment(),
            Unit.N_MM,
            pad -> {
              shares(pad, joint, m);
              return GlueTurning.plasticCentred(pad, with.crossedGlue(pad), 1, a, b);
            });
    with.limits()
        .strength(
            "glue line at its worst corner",
            "glue line",
            Unit.MPA,
            pad -> {
              shares(pad, joint, m);
              return GlueTurning.corner(pad, 1, a, b, f.moment(), f.axial(), f.shear());
            },
            with::crossedGlue);
  }

  private static void shares(Pad pad, HalfLap joint, Joint.Members m) {
    if (pad.keepsLines()) {
      GrainShares.lap(pad, joint.railPart(), m.postDepth(), m.railDepth(), m.railThickness());
    }
  }

  static void housing(Housing joint, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    with.limits()
        .strength(
            "end crushing in its housing",
            "rail",
            Unit.MPA,
            pad -> Bearing.fromForce(pad, Math.abs(f.shear()), m.railThickness(), joint.depth()),
            with::edgeBearing);
    with.limits()
        .strength(
            "end shearing at the housing",
            "rail",
            f.shear(),
            Unit.N,
            pad ->
                TenonShear.capacity(
                    pad,
                    with.family(),
                    with.rail().fV(),
                    m.railThickness(),
                    m.railDepth(),
                    0,
                    joint.depth()));
    with.limits()
        .strength(
            "end turning in its housing",
            "rail",
            f.moment(),
            Unit.N_MM,
            pad ->
                Bearing.elasticMoment(
                    pad, with.edgeBearing(pad), m.railThickness(), joint.depth()));
    if (joint.screws().isPresent()) {
      ScrewedCapacity.housing(joint, joint.screws().get(), with);
    } else {
      with.limits()
          .strength(
              "end pulling out of its housing",
              "joint",
              f.tension(),
              Unit.N,
              LapCapacity::endGrain);
    }
  }

  private static double endGrain(Pad pad) {
    pad.remark("Glue on end grain is not counted: nothing holds a housing against pulling out.");
    return 0;
  }
}
