package org.stoutwork.joint.capacity;

import java.util.Optional;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.TenonShear;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What any tenon must carry as bare wood, as if its glue had failed: shear with the shoulder as a
 * notch, bending and tension at the root, edges in the mortise, the post's horn.
 *
 * @param tenon height, thickness of all tenons together, and the bores that run along it
 * @param length in the post
 * @param below shoulder below
 * @param above shoulder above
 * @param mortise width of the mortise
 * @param haunch above the tenon, if any
 */
record TenonRoot(
    Case with,
    BoredTenon tenon,
    double length,
    double below,
    double above,
    double mortise,
    Optional<MortiseAndTenon.Haunch> haunch) {

  private static final String NO_FRICTION =
      "The friction of the shoulder that the bolts draw up is not counted: as the wood dries their"
          + " draw is lost, and the tenon carries by itself.";

  private static final Formula ROOT =
      Formula.define("u")
          .meaning("bending both ways and tension at the root")
          .where("M_y", "moment in the plane of the frame", Unit.N_MM)
          .where("M_z", "moment across it", Unit.N_MM)
          .where("N", "pull", Unit.N)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("f_m", "bending strength", Unit.MPA)
          .where("f_t", "tension strength", Unit.MPA)
          .as("6*M_y/(t*h^2*f_m) + 6*M_z/(h*t^2*f_m) + N/(t*h*f_t)")
          .source(Source.derived("beam theory; stresses added"));

  private static final Formula NET_ROOT =
      Formula.define("u")
          .meaning("bending both ways and tension at the root, less the bores")
          .where("M_y", "moment in the plane of the frame", Unit.N_MM)
          .where("M_z", "moment across it", Unit.N_MM)
          .where("N", "pull", Unit.N)
          .where("W_y", "net section modulus up and down", Unit.MM3)
          .where("W_z", "net section modulus sideways", Unit.MM3)
          .where("A_n", "net area", Unit.MM2)
          .where("f_m", "bending strength", Unit.MPA)
          .where("f_t", "tension strength", Unit.MPA)
          .as("M_y/(W_y*f_m) + M_z/(W_z*f_m) + N/(A_n*f_t)")
          .source(Source.derived("beam theory; stresses added"));

  private static final Formula SIDE =
      Formula.define("V_R")
          .meaning("shear of the tenon across the frame")
          .unit(Unit.N)
          .where("f_v", "shear strength", Unit.MPA)
          .where("k_cr", "share of the width left by cracks", Unit.ONE)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .as("f_v*k_cr*t*h/1.5")
          .source(Source.derived("beam theory"));

  private static final Formula TWIST =
      Formula.define("T_R")
          .meaning("twist of the bare tenon")
          .unit(Unit.N_MM)
          .where("f_v", "shear strength", Unit.MPA)
          .where("a", "longer side", Unit.MM)
          .where("b", "shorter side", Unit.MM)
          .as("f_v*a^2*b^2/(3*a + 1.8*b)")
          .source(Source.fromMemory("Roark's Formulas", "torsion of a rectangle"));

  private double height() {
    return tenon.height();
  }

  private double thickness() {
    return tenon.thickness();
  }

  /**
   * All limits.
   *
   * @param bareMoment whether the whole moment goes through the root, as nothing else carries it
   * @param heldDown whether something else than the post's horn keeps the rail from lifting out of
   *     a mortise that is open above
   */
  void all(boolean bareMoment, boolean heldDown) {
    JointForces f = with.forces();
    double moment = bareMoment ? Math.abs(f.moment()) : 0;
    shear(f);
    bending(f, moment);
    edges(f, moment);
    twist(f);
    CrossedTenon crossed =
        CrossedTenon.of(thickness(), height(), below, length, with.setting().crossed());
    if (crossed.crossed()) {
      new CrossingBolts(with, crossed, length).all(moment);
    }
    double beyond = f.shear() >= 0 ? with.setting().postBelow() : with.setting().postAbove();
    boolean open = heldDown && f.shear() < 0 && with.setting().openAbove();
    if (Double.isFinite(beyond) && !open) {
      horn(f, beyond);
    }
  }

  private void shear(JointForces f) {
    double shoulder = f.shear() >= 0 ? below : above;
    with.limits()
        .strength(
            "tenon shear at the shoulder",
            "tenon",
            f.shear(),
            Unit.N,
            pad -> {
              double counted = tenon.shearThickness(pad);
              if (tenon.bore() > 0) {
                pad.remark(NO_FRICTION);
              }
              return TenonShear.capacity(
                  pad, with.family(), with.rail().fV(), counted, height(), shoulder, length);
            });
    with.limits()
        .strength(
            "tenon shear across the frame",
            "tenon",
            f.shearAcross(),
            Unit.N,
            pad ->
                pad.take(
                    SIDE,
                    with.rail().fV(),
                    with.family().crackFactor(),
                    thickness(),
                    tenon.shearHeight(pad)));
  }

  private void bending(JointForces f, double moment) {
    with.limits()
        .strength(
            "tenon breaking at the root",
            "tenon",
            Unit.ONE,
            pad -> {
              double my = moment + TenonShear.rootMoment(pad, Math.abs(f.shear()), length / 2);
              double mz =
                  Math.abs(f.momentVertical())
                      + TenonShear.rootMoment(pad, Math.abs(f.shearAcross()), length / 2);
              return atRoot(pad, my, mz, f.tension());
            },
            pad -> 1);
  }

  private double atRoot(Pad pad, double my, double mz, double pull) {
    double fm = with.rail().fM();
    double ft = with.rail().fT0();
    if (!tenon.bored()) {
      return pad.take(ROOT, my, mz, pull, thickness(), height(), fm, ft);
    }
    BoredTenon.Root net = tenon.root(pad);
    return pad.take(NET_ROOT, my, mz, pull, net.upright(), net.sideways(), net.area(), fm, ft);
  }

  private void twist(JointForces f) {
    with.limits()
        .strength(
            "tenon twisting off",
            "tenon",
            f.torsion(),
            Unit.N_MM,
            pad -> {
              double high = tenon.twistHeight(pad);
              return pad.take(
                  TWIST,
                  with.rail().fV(),
                  Math.max(high, thickness()),
                  Math.min(high, thickness()));
            });
  }

  private void edges(JointForces f, double moment) {
    with.limits()
        .strength(
            "tenon edge crushing in the mortise",
            "tenon",
            Unit.MPA,
            pad -> pressure(pad, f, moment),
            with::edgeBearing);
  }

  private double pressure(Pad pad, JointForces f, double moment) {
    double even = Bearing.fromForce(pad, Math.abs(f.shear()), thickness(), length);
    if (moment == 0) {
      return even;
    }
    return Bearing.both(pad, even, Bearing.fromMoment(pad, moment, thickness(), length));
  }

  private void horn(JointForces f, double beyond) {
    with.limits()
        .strength(
            "horn of the post shearing off",
            "post",
            f.shear(),
            Unit.N,
            pad -> {
              double fv = with.post().fV();
              return f.shear() < 0 && haunch.isPresent()
                  ? Splitting.groovedHorn(
                      pad,
                      length,
                      mortise,
                      beyond,
                      haunch.get().length(),
                      haunch.get().height(),
                      fv)
                  : Splitting.horn(pad, length, mortise, beyond, fv);
            });
  }
}
