package org.stoutwork.joint.peg;

import org.stoutwork.fastener.Peg;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What a drawbore offset does to its peg and to the shoulder.
 *
 * @param stiffness of the peg against drawing, N/mm
 * @param elastic draw force if the peg stayed elastic, N
 * @param strain of the peg at the same estimate
 * @param strainUse strain over the peg's elastic limit; above 1 it bends for good
 * @param clamp force on the shoulder when made, N
 * @param lasting force that remains after months, N
 * @param usefulOffset beyond which more offset adds damage and no force, mm
 */
public record Drawbore(
    double stiffness,
    double elastic,
    double strain,
    double strainUse,
    double clamp,
    double lasting,
    double usefulOffset) {

  /** Share of the draw force that months leave; judgement. */
  public static final double RELAXED = 0.4;

  private static final Source BEAM = Source.derived("beam theory: the peg on the cheeks' middles");

  private static final Formula ELASTIC =
      Formula.define("F_el")
          .meaning("draw force if the peg stayed elastic")
          .unit(Unit.N)
          .where("k", "stiffness of the drawn peg", Unit.N_PER_MM)
          .where("e", "offset", Unit.MM)
          .as("k*e")
          .source(BEAM);

  private static final Formula STRAIN =
      Formula.define("ε")
          .meaning("bending strain of the peg")
          .where("F_el", "elastic draw force", Unit.N)
          .where("L_s", "span", Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .where("d", "peg diameter", Unit.MM)
          .where("E", "modulus of the peg", Unit.MPA)
          .where("I_p", "second moment of area of the peg", Unit.MM4)
          .as("F_el*(2*L_s - t)*d/(16*E*I_p)")
          .source(BEAM);

  private static final Formula STRAIN_USE =
      Formula.define("u_ε")
          .meaning("strain over the peg's elastic limit")
          .where("ε", "strain", Unit.ONE)
          .where("f_m", "bending strength of the peg", Unit.MPA)
          .where("E", "modulus of the peg", Unit.MPA)
          .as("ε/(f_m/E)")
          .source(BEAM);

  private static final Formula CLAMP =
      Formula.define("F_0")
          .meaning("force on the shoulder when made")
          .unit(Unit.N)
          .where("F_el", "elastic draw force", Unit.N)
          .where("Z_y", "force at which the peg yields", Unit.N)
          .as("min(F_el, Z_y)")
          .source(Source.derived("an elastic and plastic peg"));

  private static final Formula LASTING =
      Formula.define("F_{∞}")
          .meaning("force that remains after months")
          .unit(Unit.N)
          .where("r", "share that remains", Unit.ONE)
          .where("F_0", "force when made", Unit.N)
          .as("r*F_0")
          .source(Source.projectDefault("0.3 to 0.5 after months, judgement"));

  private static final Formula USEFUL =
      Formula.define("e_y")
          .meaning("offset at which the peg yields")
          .unit(Unit.MM)
          .where("Z_y", "force at which the peg yields", Unit.N)
          .where("k", "stiffness of the drawn peg", Unit.N_PER_MM)
          .as("Z_y/k")
          .source(BEAM);

  /**
   * The effect of an offset.
   *
   * @param offset e, mm
   * @param t tenon thickness, mm
   * @param cheek c, mm
   * @param density mean density for crushing, kg/m³
   * @param yield force at which the peg yields in double shear, test level, N
   * @param remains share of the force that remains
   */
  public static Drawbore of(
      Pad pad,
      Peg peg,
      double offset,
      double t,
      double cheek,
      double density,
      double yield,
      double remains) {
    double k = PegSpring.drawn(pad, peg, t, cheek, density);
    double elastic = pad.take(ELASTIC, k, offset);
    double inertia = PegSpring.secondMoment(Pad.blank(), peg.diameter());
    double modulus = peg.wood().modulus();
    double strain = pad.take(STRAIN, elastic, t + cheek, t, peg.diameter(), modulus, inertia);
    double use = pad.take(STRAIN_USE, strain, peg.wood().bendingStrength(), modulus);
    double clamp = pad.take(CLAMP, elastic, yield);
    double lasting = pad.take(LASTING, remains, clamp);
    return new Drawbore(k, elastic, strain, use, clamp, lasting, pad.take(USEFUL, yield, k));
  }

  /** Largest offset the trade gives a peg, mm: an eighth of it in hardwood, a sixth in softwood. */
  public static double largestOffset(double diameter, boolean hardwood) {
    return diameter / (hardwood ? 8 : 6);
  }
}
