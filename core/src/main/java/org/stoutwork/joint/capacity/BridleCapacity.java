package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.glue.GrainShares;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.tenon.TenonShear;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Bridles: glue faces twisted in their plane; tongue and cheeks in bending. */
final class BridleCapacity {

  private static final Formula CHEEKS =
      Formula.define("M_R")
          .meaning("moment that breaks the cheeks of the post")
          .unit(Unit.N_MM)
          .where("f_m", "bending strength of the post", Unit.MPA)
          .where("c_all", "thickness of all cheeks", Unit.MM)
          .where("p", "post depth", Unit.MM)
          .as("f_m*c_all*p^2/6")
          .source(Source.derived("beam theory"));

  private BridleCapacity() {}

  static void all(Bridle joint, Case with) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    int faces = 2 * joint.count();
    double tongue = joint.thickness() * joint.count();
    if (joint.fit().glued()) {
      glue(with, faces, tongue, m);
      panels(joint, with, tongue);
    }
    boolean carriesMoment = joint.fit().glued() || joint.fit() instanceof Fit.Pegged;
    if (!carriesMoment) {
      with.limits()
          .strength("dry bridle turning freely", "joint", f.moment(), Unit.N_MM, pad -> free(pad));
    }
    bare(joint, with, tongue);
    if (joint.fit() instanceof Fit.Pegged pegged) {
      pegs(joint, pegged, with);
    }
  }

  private static double glued(Joint.Members m) {
    return Math.min(m.railDepth(), 100);
  }

  /** A cheek between two tongues is glued on both sides and has half of itself for each. */
  private static void panels(Bridle joint, Case with, double tongue) {
    Joint.Members m = with.members();
    double outer = joint.cheek(m);
    double thinnest = joint.count() == 1 ? outer : Math.min(outer, joint.thickness() / 2);
    CrossedPanels panels = new CrossedPanels(with, m.postDepth(), glued(m));
    panels.rail(new CrossedPanels.Piece("tongue", "tenon", with.rail(), tongue, m.railDepth()));
    panels.post(
        new CrossedPanels.Piece(
            "cheeks of the slot",
            "post",
            with.post(),
            2 * joint.count() * thinnest,
            m.postDepth()));
  }

  private static void bare(Bridle joint, Case with, double tongue) {
    Joint.Members m = with.members();
    JointForces f = with.forces();
    with.limits()
        .strength(
            "tongue breaking at the root",
            "tenon",
            f.moment(),
            Unit.N_MM,
            pad ->
                TenonShear.rootCapacity(
                    pad, with.rail().fM(), TenonShear.modulus(pad, tongue, m.railDepth())));
    with.limits()
        .strength(
            "cheeks of the post breaking",
            "post",
            f.moment(),
            Unit.N_MM,
            pad ->
                pad.take(
                    CHEEKS,
                    with.post().fM(),
                    m.postThickness() - joint.thickness() * joint.count(),
                    m.postDepth()));
    with.limits()
        .strength(
            "tongue shearing at the shoulder",
            "tenon",
            f.shear(),
            Unit.N,
            pad ->
                TenonShear.capacity(
                    pad, with.family(), with.rail().fV(), tongue, m.railDepth(), 0, m.postDepth()));
  }

  private static double free(Pad pad) {
    pad.remark("Without peg or glue a bridle is a pin.");
    return 0;
  }

  private static void pegs(Bridle joint, Fit.Pegged pegged, Case with) {
    Joint.Members m = with.members();
    new PegCapacity(
            with,
            pegged,
            new PeggedTenon(
                m.railDepth(),
                0,
                joint.thickness(),
                joint.count(),
                m.postDepth(),
                joint.cheek(m),
                0))
        .all();
  }

  private static void glue(Case with, int faces, double tongues, Joint.Members m) {
    JointForces f = with.forces();
    double a = m.postDepth();
    double b = glued(m);
    with.limits()
        .strength(
            "glue line under moment",
            "glue line",
            f.moment(),
            Unit.N_MM,
            pad -> {
              if (pad.keepsLines()) {
                GrainShares.bridle(pad, faces, tongues, a, m.railDepth(), m.railThickness());
              }
              return GlueTurning.plasticCentred(pad, with.crossedGlue(pad), faces, a, b);
            });
    with.limits()
        .strength(
            "glue line at its worst corner",
            "glue line",
            Unit.MPA,
            pad -> {
              if (pad.keepsLines()) {
                GrainShares.bridle(pad, faces, tongues, a, m.railDepth(), m.railThickness());
              }
              return GlueTurning.corner(pad, faces, a, b, f.moment(), f.axial(), f.shear());
            },
            with::crossedGlue);
  }
}
