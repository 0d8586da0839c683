package org.stoutwork.joint.peg;

import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * A peg as a short beam on the middles of the two mortise cheeks, loaded evenly over the tenon's
 * thickness, with local crushing at its ends.
 */
public final class PegSpring {

  private static final Source BEAM = Source.derived("beam theory: simply supported, part loaded");

  private static final Formula SPAN =
      Formula.define("L_s")
          .meaning("span of the peg between the middles of the cheeks")
          .unit(Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .where("c", "cheek thickness", Unit.MM)
          .as("t + c")
          .source(Source.derived("geometry"));

  private static final Formula SECOND_MOMENT =
      Formula.define("I_p")
          .meaning("second moment of area of the peg")
          .unit(Unit.MM4)
          .where("d", "peg diameter", Unit.MM)
          .as("π*d^4/64")
          .source(Source.derived("geometry"));

  private static final Formula BENDING =
      Formula.define("k_b")
          .meaning("stiffness of the peg in bending")
          .unit(Unit.N_PER_MM)
          .where("E", "modulus of the peg", Unit.MPA)
          .where("I_p", "second moment of area of the peg", Unit.MM4)
          .where("L_s", "span", Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .as("384*E*I_p/(8*L_s^3 - 4*L_s*t^2 + t^3)")
          .source(BEAM);

  private static final Formula SHEAR =
      Formula.define("k_v")
          .meaning("stiffness of the peg in shear, G = E/16, shear area 0.9 of the circle")
          .unit(Unit.N_PER_MM)
          .where("E", "modulus of the peg", Unit.MPA)
          .where("d", "peg diameter", Unit.MM)
          .where("L_s", "span", Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .as("8*(E/16)*0.9*π*d^2/4/(2*L_s - t)")
          .source(BEAM);

  private static final Formula DRAWN =
      Formula.define("k")
          .meaning("stiffness of a drawn peg: bending and crushing in series")
          .unit(Unit.N_PER_MM)
          .where("k_b", "bending", Unit.N_PER_MM)
          .where("K_ser", "crushing, one plane", Unit.N_PER_MM)
          .as("1/(1/k_b + 1/(2*K_ser))")
          .source(Source.derived("springs in series"));

  private static final Formula PULLED =
      Formula.define("k_p")
          .meaning("stiffness of a peg pulled by the tenon: bending, shear and crushing in series")
          .unit(Unit.N_PER_MM)
          .where("k_b", "bending", Unit.N_PER_MM)
          .where("k_v", "shear", Unit.N_PER_MM)
          .where("K_ser", "crushing, one plane", Unit.N_PER_MM)
          .as("1/(1/k_b + 1/k_v + 1/(2*K_ser))")
          .source(Source.derived("springs in series"));

  private static final Formula ROTATION =
      Formula.define("K_peg")
          .meaning("rotational stiffness by peg and shoulder once the shoulder opens")
          .unit(Unit.N_MM_PER_RAD)
          .where("z", "lever from peg to shoulder pressure", Unit.MM)
          .where("k_p", "stiffness of the pegs", Unit.N_PER_MM)
          .where("k_C", "stiffness of the post under the shoulder", Unit.N_PER_MM)
          .as("z^2/(1/k_p + 1/k_C)")
          .source(Source.derived("springs in series on a lever"));

  private PegSpring() {}

  /** Span of the peg, mm. */
  public static double span(Pad pad, double t, double c) {
    return pad.take(SPAN, t, c);
  }

  /** Second moment of area, mm⁴. */
  public static double secondMoment(Pad pad, double d) {
    return pad.take(SECOND_MOMENT, d);
  }

  /** Bending stiffness, N/mm. */
  public static double bending(Pad pad, Peg peg, double t, double c) {
    double span = span(pad, t, c);
    return pad.take(BENDING, peg.wood().modulus(), secondMoment(pad, peg.diameter()), span, t);
  }

  /** Shear stiffness, N/mm. */
  public static double shear(Pad pad, Peg peg, double t, double c) {
    double span = SPAN.value(t, c);
    return pad.take(SHEAR, peg.wood().modulus(), peg.diameter(), span, t);
  }

  /** Stiffness against drawing, N/mm: what turns a drawbore offset into a force. */
  public static double drawn(Pad pad, Peg peg, double t, double c, double density) {
    double kb = bending(pad, peg, t, c);
    return pad.take(DRAWN, kb, Slip.dowel(pad, density, peg.diameter()));
  }

  /** Stiffness of one peg pulled by the tenon, N/mm. Half and double it for a range. */
  public static double pulled(Pad pad, Peg peg, double t, double c, double density) {
    double kb = bending(pad, peg, t, c);
    double kv = shear(pad, peg, t, c);
    return pad.take(PULLED, kb, kv, Slip.dowel(pad, density, peg.diameter()));
  }

  /** Rotational stiffness of pegs and shoulder, N·mm/rad. */
  public static double rotation(Pad pad, double z, double pegs, double bearing) {
    return pad.take(ROTATION, z, pegs, bearing);
  }
}
