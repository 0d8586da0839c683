package org.stoutwork.joint.capacity;

import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.WoodPegYield;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.bolted.BarrelNut;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.glue.GrainShares;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.regression.DowelWithdrawal;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Glued dowels in a butt joint: pulled, bent over, and where they sit. */
final class DowelCapacity {

  private static final Formula PULL =
      Formula.define("F_1")
          .meaning("pull of one dowel: glue in the rail, glue in the post, or the dowel itself")
          .unit(Unit.N)
          .where("f_g", "glue strength across the post's grain", Unit.MPA)
          .where("d", "dowel diameter", Unit.MM)
          .where("l_r", "length in the rail, grain along the dowel", Unit.MM)
          .where("l_p", "length in the post, grain across the dowel", Unit.MM)
          .where("f_t", "tension strength of the dowel", Unit.MPA)
          .as("min(3*f_g*π*d*l_r, f_g*π*d*l_p," + " f_t*π*d^2/4)")
          .source(Source.derived("statics: glue along the grain three times that across it"));

  private static final Formula MOMENT =
      Formula.define("M_R")
          .meaning("moment when the farthest dowel reaches its pull")
          .unit(Unit.N_MM)
          .where("F_1", "pull of one dowel", Unit.N)
          .where("S_2", "sum of squared levers", Unit.MM2)
          .where("z_max", "lever of the farthest", Unit.MM)
          .as("F_1*S_2/z_max")
          .source(Source.derived("statics: pull grows with the lever"));

  private static final Formula ALL =
      Formula.define("F_R")
          .meaning("all dowels")
          .unit(Unit.N)
          .where("n", "number", Unit.ONE)
          .where("F_1", "one dowel", Unit.N)
          .as("n*F_1")
          .source(Source.derived("statics"));

  private static final Formula ONE_PLANE =
      Formula.define("Z_V")
          .meaning("dowel shears on one plane, adjusted for load duration")
          .unit(Unit.N)
          .where("d", "diameter", Unit.MM)
          .where("F_v", "allowable shear stress", Unit.MPA)
          .where("C_D", "load duration", Unit.ONE)
          .as("π*d^2/4*F_v*C_D")
          .source(Source.fromMemory("TFEC 1", "mode V, one plane"));

  private DowelCapacity() {}

  static void all(DowelledButt joint, Case with) {
    JointForces f = with.forces();
    with.limits()
        .strength(
            "dowels pulling out under moment",
            "dowel",
            f.moment(),
            Unit.N_MM,
            pad -> moment(pad, joint, with));
    with.limits()
        .strength(
            "dowels pulling out",
            "dowel",
            f.tension(),
            Unit.N,
            pad -> pad.take(ALL, joint.count(), pull(pad, joint, with)));
    with.limits()
        .strength(
            "dowels yielding across",
            "dowel",
            Math.hypot(f.shear(), f.shearAcross()),
            Unit.N,
            pad -> pad.take(ALL, joint.count(), across(pad, joint, with)));
    with.limits()
        .strength(
            "post splitting across the grain",
            "post",
            f.tension(),
            Unit.N,
            pad ->
                Splitting.force(
                    pad,
                    with.family(),
                    with.post().fV(),
                    with.members().postThickness(),
                    joint.inPost(),
                    with.members().postDepth()));
    places(joint, with);
  }

  private static double pull(Pad pad, DowelledButt joint, Case with) {
    Peg dowel = joint.dowel();
    DowelWithdrawal.beside(pad, dowel.diameter(), joint.inPost(), with.post().shearMean());
    double ft = GlueDesign.lower(pad, dowel.wood().bendingStrength() * 0.6, 0.16);
    double design = GlueDesign.design(pad, ft, with.family());
    if (pad.keepsLines()) {
      Joint.Members m = with.members();
      GrainShares.dowels(
          pad,
          joint.count(),
          dowel.diameter(),
          joint.inRail(),
          joint.inPost(),
          m.railDepth(),
          m.railThickness());
    }
    return pad.take(
        PULL, with.crossedGlue(pad), dowel.diameter(), joint.inRail(), joint.inPost(), design);
  }

  private static double moment(Pad pad, DowelledButt joint, Case with) {
    double depth = with.members().railDepth();
    boolean fromBelow = with.forces().moment() >= 0;
    double squares = 0;
    double farthest = 0;
    for (int i = 0; i < joint.count(); i++) {
      double y = joint.edge() + i * joint.spacing();
      double z = Math.max(0, (fromBelow ? y : depth - y) - depth / 9);
      squares += z * z;
      farthest = Math.max(farthest, z);
    }
    return pad.take(MOMENT, pull(pad, joint, with), squares, Math.max(farthest, 1));
  }

  private static double across(Pad pad, DowelledButt joint, Case with) {
    Peg dowel = joint.dowel();
    double d = dowel.diameter();
    double gravity = Math.min(with.rail().gravity(), with.post().gravity());
    if (with.family() instanceof StrengthFamily.Allowable a) {
      double fv = WoodPegYield.shear(pad, dowel.wood().specificGravity(), gravity);
      return pad.take(ONE_PLANE, d, fv, a.loadDuration());
    }
    double rail = Embedment.ec5(pad, d, with.rail().density(), 90, with.rail().hardwood());
    double post = Embedment.along(pad, d, with.post().density());
    double fm = GlueDesign.lower(pad, dowel.wood().bendingStrength(), 0.16);
    double my = Johansen.woodMoment(pad, fm, d);
    double yield =
        Johansen.single(pad, joint.inRail(), joint.inPost(), d, rail, post, my, 0, 0)
            .least()
            .force();
    return BarrelNut.design(pad, yield, with.family());
  }

  private static void places(DowelledButt joint, Case with) {
    double d = joint.dowel().diameter();
    Distances least = Distances.peg(d, with.rail().gravity(), with.rail().hardwood());
    with.limits()
        .rule(
            "dowel from the rail's edge",
            "rail",
            joint.edge(),
            least.edge(),
            Unit.MM,
            least.source());
    with.limits()
        .rule(
            "spacing of dowels",
            "rail",
            joint.spacing(),
            least.acrossGrain(),
            Unit.MM,
            least.source());
  }
}
