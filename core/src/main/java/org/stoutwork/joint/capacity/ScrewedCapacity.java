package org.stoutwork.joint.capacity;

import java.util.List;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.screwed.ButtForces;
import org.stoutwork.joint.screwed.FastenerForces;
import org.stoutwork.joint.screwed.LapForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.quantity.Unit;

/** Screws of laps, housings and butt joints: what falls to the most used one, and its strength. */
final class ScrewedCapacity {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** Levers are counted from a third of the pressed depth, itself a third of the rail's. */
  private static final double PRESSED = 9;

  private ScrewedCapacity() {}

  /** A lap without glue: the screws carry everything. */
  static void lap(HalfLap joint, ScrewSet set, Case with) {
    if (set.count() == 1) {
      with.limits()
          .strength(
              "lap turning on one screw",
              "joint",
              with.forces().moment(),
              Unit.N_MM,
              LapCapacity::free);
    }
    ScrewCapacity.add(
        with.limits(),
        lapScrew(joint, set, with),
        with.family(),
        lapForces(set, with),
        lapInRail(joint, set, with.members()),
        lapInPost(joint, set, with));
  }

  /** A glued lap: the screws press it until the glue is dry, and are not counted beside it. */
  static void pressing(HalfLap joint, ScrewSet set, Case with) {
    ScrewCapacity.addRules(
        with.limits(),
        lapScrew(joint, set, with),
        with.family(),
        lapInRail(joint, set, with.members()),
        lapInPost(joint, set, with));
  }

  private static Screwing lapScrew(HalfLap joint, ScrewSet set, Case with) {
    return new Screwing(
        set.screw(),
        joint.railPart(),
        with.rail(),
        with.post(),
        90,
        90,
        false,
        ScrewHole.round(set.screw().diameter()),
        set.pilot());
  }

  private static FastenerForces lapForces(ScrewSet set, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    double apart =
        Math.abs(f.shearAcross())
            + Math.abs(f.momentVertical()) / (m.postDepth() / 2)
            + Math.abs(f.torsion()) / (m.railDepth() / 2);
    return new LapForces(
        set.count(),
        Math.abs(f.axial()),
        Math.abs(f.shear()),
        Math.abs(f.moment()),
        apart,
        set.offCentre(m.postDepth()),
        set.farBeside(m.postDepth()),
        set.count() == 1 ? 0 : m.railDepth() / 2 - set.fromEdge(),
        set.squares(m.postDepth(), m.railDepth()));
  }

  /**
   * The rail ends at the far side of the post; its grain runs across the post's. Screws that stand
   * to either side of the middle are asked for their spacing as if they stood on it: in the rail
   * each has a line of the grain to itself, a pitch from the next; in the post all have one.
   */
  private static List<Seat> lapInRail(HalfLap joint, ScrewSet set, Joint.Members m) {
    double d = set.screw().diameter();
    double end = (m.postDepth() - set.stagger(m.postDepth())) / 2;
    double slender = joint.railPart() / d;
    double pitch = some(set.pitch(m.railDepth()));
    return List.of(
        new Seat("rail", end, NONE, NONE, NONE, 0, slender),
        new Seat("rail", NONE, edge(set, m), NONE, pitch, 90, slender));
  }

  private static List<Seat> lapInPost(HalfLap joint, ScrewSet set, Case with) {
    Joint.Members m = with.members();
    double d = set.screw().diameter();
    double end = Math.min(with.setting().postAbove(), with.setting().postBelow()) + edge(set, m);
    double side = (m.postDepth() - set.stagger(m.postDepth())) / 2;
    double slender = (set.screw().length() - joint.railPart()) / d;
    double pitch = some(set.pitch(m.railDepth()));
    return List.of(
        new Seat("post", end, NONE, pitch, NONE, 0, slender),
        new Seat("post", NONE, side, NONE, NONE, 90, slender));
  }

  private static double edge(ScrewSet set, Joint.Members m) {
    return set.count() == 1 ? m.railDepth() / 2 : set.fromEdge();
  }

  private static double some(double spacing) {
    return spacing > 0 ? spacing : NONE;
  }

  /** A housing carries shear and turning by its trench; the screws hold it in. */
  static void housing(Housing joint, ScrewSet set, Case with) {
    JointForces f = with.forces();
    ButtForces forces = new ButtForces(set.count(), f.tension(), 0, 0, 0, 1, 1, 1);
    end(set, with.members().postDepth() - joint.depth(), forces, with);
  }

  static void butt(ScrewedButt joint, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    ScrewSet set = joint.screws();
    double squares = 0;
    double farthest = 0;
    for (double height : set.heights(m.railDepth())) {
      double z = Math.max(1, height - m.railDepth() / PRESSED);
      squares += z * z;
      farthest = Math.max(farthest, z);
    }
    ButtForces forces =
        new ButtForces(
            set.count(),
            f.tension(),
            Math.abs(f.moment()),
            Math.abs(f.momentVertical()),
            Math.hypot(f.shear(), f.shearAcross()),
            squares,
            farthest,
            m.railThickness() / 2);
    end(set, m.postDepth(), forces, with);
  }

  /** Screws through the post into the end grain of the rail. */
  private static void end(ScrewSet set, double through, FastenerForces forces, Case with) {
    Joint.Members m = with.members();
    double d = set.screw().diameter();
    Screwing screwing =
        new Screwing(
            set.screw(),
            through,
            with.post(),
            with.rail(),
            90,
            90,
            true,
            ScrewHole.round(d),
            set.pilot());
    double pitch = some(set.pitch(m.railDepth()));
    double end = Math.min(with.setting().postAbove(), with.setting().postBelow()) + edge(set, m);
    List<Seat> post =
        List.of(
            new Seat("post", end, NONE, pitch, NONE, 0, through / d),
            new Seat("post", NONE, m.postThickness() / 2, NONE, NONE, 90, through / d));
    double edge = Math.min(edge(set, m), m.railThickness() / 2);
    List<Seat> rail = List.of(new Seat("rail", NONE, edge, NONE, pitch, 90, screwing.reach() / d));
    ScrewCapacity.add(with.limits(), screwing, with.family(), forces, post, rail);
  }
}
