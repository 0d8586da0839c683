package org.stoutwork.joint.capacity;

import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** A tenon that bolts of another joint run through inside the post. */
record CrossingBolts(Case with, CrossedTenon tenon, double length) {

  private static final Formula PASSING =
      Formula.define("V_b")
          .meaning("shear that passes the near side of the bore")
          .unit(Unit.N)
          .where("V", "shear force of the joint", Unit.N)
          .where("l", "tenon length", Unit.MM)
          .where("x_b", "distance of the bore's near side from the shoulder", Unit.MM)
          .as("V*(l - x_b)/l")
          .source(Source.derived("statics: the mortise presses evenly along the tenon"));

  private static final Formula MOMENT =
      Formula.define("M_b")
          .meaning("moment at the near side of the bore")
          .unit(Unit.N_MM)
          .where("V_b", "shear that passes it", Unit.N)
          .where("l", "tenon length", Unit.MM)
          .where("x_b", "distance of the bore's near side from the shoulder", Unit.MM)
          .as("V_b*(l - x_b)/2")
          .source(Source.derived("statics: the mortise presses evenly along the tenon"));

  private static final Formula SHEAR =
      Formula.define("V_R")
          .meaning("shear of the tenon where bolts cross it")
          .unit(Unit.N)
          .where("f_v", "shear strength", Unit.MPA)
          .where("k_cr", "share of the width left by cracks", Unit.ONE)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h_v", "height that counts for shear", Unit.MM)
          .as("f_v*k_cr*t*h_v/1.5")
          .source(Source.derived("beam theory"));

  private static final Formula ROOT =
      Formula.define("u")
          .meaning("bending both ways and tension where bolts cross the tenon")
          .where("M_y", "moment in the plane of the frame", Unit.N_MM)
          .where("M_z", "moment across it", Unit.N_MM)
          .where("N", "pull", Unit.N)
          .where("W_y", "net section modulus up and down", Unit.MM3)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h_n", "height that is left", Unit.MM)
          .where("f_m", "bending strength", Unit.MPA)
          .where("f_t", "tension strength", Unit.MPA)
          .as("M_y/(W_y*f_m) + 6*M_z/(h_n*t^2*f_m) + N/(t*h_n*f_t)")
          .source(Source.derived("beam theory; stresses added"));

  void all(double moment) {
    JointForces f = with.forces();
    with.limits()
        .strength(
            "tenon shear where a bolt crosses it",
            "tenon",
            Unit.N,
            pad -> passing(pad, f.shear()),
            pad ->
                pad.take(
                    SHEAR,
                    with.rail().fV(),
                    with.family().crackFactor(),
                    tenon.thickness(),
                    tenon.sheared(pad)));
    with.limits()
        .strength(
            "tenon breaking where a bolt crosses it",
            "tenon",
            Unit.ONE,
            pad -> bent(pad, f, moment),
            pad -> 1);
  }

  private double passing(Pad pad, double shear) {
    return pad.take(PASSING, Math.abs(shear), length, tenon.near());
  }

  private double moment(Pad pad, double shear) {
    return pad.take(MOMENT, passing(pad, shear), length, tenon.near());
  }

  /** The moment of the joint is not let fall off along the tenon, the pull neither. */
  private double bent(Pad pad, JointForces f, double moment) {
    double my = moment + moment(pad, f.shear());
    double mz = Math.abs(f.momentVertical()) + moment(pad, f.shearAcross());
    double left = tenon.left(pad);
    return pad.take(
        ROOT,
        my,
        mz,
        f.tension(),
        tenon.modulus(pad, left),
        tenon.thickness(),
        left,
        with.rail().fM(),
        with.rail().fT0());
  }
}
