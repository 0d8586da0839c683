package org.stoutwork.joint.capacity;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.bolted.BarrelNut;
import org.stoutwork.joint.bolted.BedBolt;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Bed bolts: each link of the chain from washer to nut; the stub tenon carries the shear. */
final class BoltedCapacity {

  /** Safety of steel in tension on the allowable side: 0.6 of yield is about f_u / 2.25. */
  private static final double STEEL_SAFETY = 2.25;

  private static final Formula PER_BOLT =
      Formula.define("F_t")
          .meaning("pull in the most loaded bolt")
          .unit(Unit.N)
          .where("M", "moment", Unit.N_MM)
          .where("z", "lever", Unit.MM)
          .where("N", "pull", Unit.N)
          .where("n", "number of bolts", Unit.ONE)
          .as("M/z + N/n")
          .source(Source.derived("statics: the far bolt taken to carry the moment alone"));

  private static final Formula AT_LEAST_DRAWN =
      Formula.define("F_b")
          .meaning("pull in the bolt: until the shoulder opens, what it was drawn up with")
          .unit(Unit.N)
          .where("F_t", "pull by the forces on the joint", Unit.N)
          .where("F_0", "preload that is kept", Unit.N)
          .as("max(F_t, F_0)")
          .source(Source.derived("a drawn-up joint"));

  private static final Formula PRESSED =
      Formula.define("σ_o")
          .meaning("pressure under the shoulder of the rail opposite")
          .unit(Unit.MPA)
          .where("n", "number of bolts", Unit.ONE)
          .where("F_b", "pull in one", Unit.N)
          .where("A_o", "shoulder less its tenon", Unit.MM2)
          .as("n*F_b/A_o")
          .source(Source.derived("statics"));

  private static final String ROD =
      "A like rail meets the post from its other face: the bolts of both are rods from nut to nut,"
          + " in one bore, without washers.";

  private BoltedCapacity() {}

  static void all(BoltedTenon joint, Case with) {
    link("bolt in tension", "bolt", joint, with, pad -> steel(pad, joint, with));
    if (with.setting().rod()) {
      opposite(joint, with);
    } else {
      link("washer pressed into the post", "washer", joint, with, pad -> washer(pad, joint, with));
    }
    link("wood crushed by the nut", "rail", joint, with, pad -> nut(pad, joint, with));
    link(
        "plug between nut and rail end shearing out",
        "rail",
        joint,
        with,
        pad -> plug(pad, joint, with));
    shoulder(joint, with);
    new BoltPlaces(joint, with).all();
    if (joint.preload() > 0) {
      with.limits()
          .service(
              "shoulder opening under moment",
              "shoulder",
              with.forces().moment(),
              Unit.N_MM,
              pad -> joint.bolts() * BedBolt.opening(pad, joint.preload(), meanLever(pad, with)));
    }
    Joint.Members m = with.members();
    new TenonRoot(
            with,
            new BoredTenon(joint.thickness(), joint.height(), joint.bore(), joint.boreLevers(m)),
            joint.length(),
            joint.shoulderBelow(),
            m.railDepth() - joint.height() - joint.shoulderBelow(),
            joint.thickness(),
            Optional.empty())
        .all(false, true);
  }

  private static void link(
      String failure, String place, BoltedTenon joint, Case with, ToDoubleFunction<Pad> capacity) {
    with.limits().strength(failure, place, Unit.N, pad -> pull(pad, joint, with), capacity);
  }

  private static double lever(Pad pad, BoltedTenon joint, Case with) {
    double depth = with.members().railDepth();
    return BedBolt.lever(pad, depth, joint.bolts() == 2 ? joint.spacing() / 2 : 0, depth / 3);
  }

  /** Lever of the middle of all bolts, which lies at the middle of the rail. */
  private static double meanLever(Pad pad, Case with) {
    double depth = with.members().railDepth();
    return BedBolt.lever(pad, depth, 0, depth / 3);
  }

  private static double pull(Pad pad, BoltedTenon joint, Case with) {
    JointForces f = with.forces();
    double asked =
        pad.take(
            PER_BOLT, Math.abs(f.moment()), lever(pad, joint, with), f.tension(), joint.bolts());
    return pad.take(AT_LEAST_DRAWN, asked, joint.preload());
  }

  private static double steel(Pad pad, BoltedTenon joint, Case with) {
    double gamma =
        with.family() instanceof StrengthFamily.PartialFactors p ? p.gammaM2() : 0.9 * STEEL_SAFETY;
    return Heads.bolt(pad, joint.bolt().ultimate(), joint.bolt().size().stressArea(), gamma);
  }

  private static double washer(Pad pad, BoltedTenon joint, Case with) {
    return with.family() instanceof StrengthFamily.Allowable
        ? Heads.washerAllowable(pad, joint.bolt().washer(), with.post().fC90())
        : Heads.washer(pad, joint.bolt().washer(), with.post().fC90());
  }

  private static double nut(Pad pad, BoltedTenon joint, Case with) {
    BoltedTenon.Nut nut = joint.nut();
    if (!nut.round()) {
      return BarrelNut.bearing(pad, with.rail().fC0(), nut.diameter(), nut.length());
    }
    double fh =
        with.family() instanceof StrengthFamily.Allowable
            ? Embedment.nds(pad, with.rail().gravity(), nut.diameter(), 0)
            : Embedment.along(pad, nut.diameter(), with.rail().density());
    return BarrelNut.design(
        pad, BarrelNut.bearing(pad, fh, nut.diameter(), nut.length()), with.family());
  }

  private static double plug(Pad pad, BoltedTenon joint, Case with) {
    BoltedTenon.Nut nut = joint.nut();
    return BarrelNut.shearOut(
        pad, with.rail().fV(), nut.fromEnd(), nut.length(), with.members().railThickness());
  }

  /** No washer finds room where a like rail stands: its shoulder takes the pull of the rods. */
  private static void opposite(BoltedTenon joint, Case with) {
    Joint.Members m = with.members();
    with.limits()
        .strength(
            "shoulder of the rail opposite pressed by the rods",
            "shoulder",
            Unit.MPA,
            pad -> {
              pad.remark(ROD);
              return pad.take(
                  PRESSED,
                  joint.bolts(),
                  pull(pad, joint, with),
                  m.railDepth() * m.railThickness() - joint.height() * joint.thickness());
            },
            pad -> with.shoulderBearing(pad, m.railDepth()));
  }

  private static void shoulder(BoltedTenon joint, Case with) {
    Joint.Members m = with.members();
    with.limits()
        .strength(
            "shoulder crushing the post",
            "shoulder",
            Unit.MPA,
            pad -> {
              double a = m.railDepth() / 3;
              double area =
                  m.railThickness() * a
                      - joint.thickness() * Math.max(0, a - joint.shoulderBelow());
              double whole = m.railDepth() * m.railThickness() - joint.height() * joint.thickness();
              double push = with.forces().compression() + joint.bolts() * joint.preload();
              return Bearing.shoulder(
                  pad,
                  Math.abs(with.forces().moment()),
                  lever(pad, joint, with),
                  with.evenly(pad, m.railDepth() / 3, m.railDepth()),
                  push,
                  area,
                  whole);
            },
            pad -> with.shoulderBearing(pad, m.railDepth() / 3));
  }
}
