package org.stoutwork.joint.capacity;

import java.util.Optional;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.peg.Relish;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.Wedging;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * A tenon drawn up by a loose wedge: relish, wedge, bearing on the post, what is left beside it.
 */
final class LooseWedgeCapacity {

  private static final Source CYCLES =
      Source.commonPractice("a loose wedge is held three times over by friction");

  private static final Formula PULL =
      Formula.define("F_w")
          .meaning("pull on the wedge from moment and axial force")
          .unit(Unit.N)
          .where("M", "moment", Unit.N_MM)
          .where("z", "lever to the shoulder pressure", Unit.MM)
          .where("N", "pull", Unit.N)
          .as("M/z + N")
          .source(Source.derived("statics"));

  private static final Formula BEARING_CAPACITY =
      Formula.define("F_b")
          .meaning("pull at which wedge and tenon crush each other")
          .unit(Unit.N)
          .where("f_c", "bearing strength, the softer of both", Unit.MPA)
          .where("w", "wedge width inside the tenon", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("f_c*w*h")
          .source(Source.derived("statics"));

  private LooseWedgeCapacity() {}

  static void all(LooseWedgeTenon joint, Case with) {
    Joint.Members m = with.members();
    double above = m.railDepth() - joint.height() - joint.shoulderBelow();
    with.limits()
        .strength(
            "relish shearing out behind the wedge",
            "tenon",
            Unit.N,
            pad -> pull(pad, joint, with),
            pad -> Relish.tearOut(pad, 1, with.rail().fV(), joint.height(), joint.relish()));
    wedge(joint, with);
    shoulder(joint, with);
    locking(joint, with);
    new TenonRoot(
            with,
            BoredTenon.sound(joint.thickness(), joint.height()),
            m.postDepth(),
            joint.shoulderBelow(),
            above,
            joint.thickness(),
            Optional.empty())
        .all(false, false);
  }

  private static void wedge(LooseWedgeTenon joint, Case with) {
    with.limits()
        .strength(
            "wedge breaking",
            "wedge",
            Unit.N,
            pad -> pull(pad, joint, with),
            pad ->
                Wedging.keyBending(
                    pad,
                    with.rail().fM(),
                    joint.wedgeWidth(),
                    joint.wedgeThickness(),
                    joint.height()));
    with.limits()
        .strength(
            "wedge crushing",
            "wedge",
            Unit.N,
            pad -> pull(pad, joint, with),
            pad ->
                pad.take(BEARING_CAPACITY, with.rail().fC90(), joint.wedgeWidth(), joint.height()));
    with.limits()
        .strength(
            "tenon tearing beside the wedge",
            "tenon",
            Unit.N,
            pad -> pull(pad, joint, with),
            pad ->
                Splitting.netTension(
                    pad,
                    Splitting.Cut.LOOSE_WEDGE,
                    with.rail().fT0(),
                    joint.thickness(),
                    joint.wedgeWidth(),
                    joint.height()));
  }

  private static ShoulderSpring.Face pressed(Pad pad, LooseWedgeTenon joint, Case with) {
    Joint.Members m = with.members();
    double above = m.railDepth() - joint.height() - joint.shoulderBelow();
    double s = with.forces().moment() >= 0 ? joint.shoulderBelow() : above;
    return ShoulderSpring.face(
        pad, m.railDepth(), m.railThickness(), joint.height(), joint.thickness(), s);
  }

  private static double pull(Pad pad, LooseWedgeTenon joint, Case with) {
    JointForces f = with.forces();
    double z = pressed(pad, joint, with).lever();
    return pad.take(PULL, Math.abs(f.moment()), z, f.tension());
  }

  private static void shoulder(LooseWedgeTenon joint, Case with) {
    Joint.Members m = with.members();
    with.limits()
        .strength(
            "shoulder crushing the post",
            "shoulder",
            Unit.MPA,
            pad -> {
              ShoulderSpring.Face p = pressed(pad, joint, with);
              double whole = m.railDepth() * m.railThickness() - joint.height() * joint.thickness();
              return Bearing.shoulder(
                  pad,
                  Math.abs(with.forces().moment()),
                  p.lever(),
                  with.evenly(pad, m.railDepth() / 3, m.railDepth()),
                  with.forces().compression(),
                  p.area(),
                  whole);
            },
            pad -> with.shoulderBearing(pad, m.railDepth() / 3));
  }

  private static void locking(LooseWedgeTenon joint, Case with) {
    with.limits()
        .least(
            "wedge holding by friction",
            "wedge",
            Unit.ONE,
            pad -> pad.given("n_req", "times it must hold", Wedging.SAFE_LOCK, Unit.ONE, CYCLES),
            pad -> Wedging.looseLock(pad, Wedging.HOLDING_FRICTION, joint.angle()));
  }
}
