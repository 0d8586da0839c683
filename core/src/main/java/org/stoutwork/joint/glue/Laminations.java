package org.stoutwork.joint.glue;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Glue lines along built-up pieces: laminated legs and tops, a piece glued on below a stretcher end
 * to deepen it, lipping; and wood glued across the movement of other wood.
 */
public final class Laminations {

  private static final Formula SHEAR =
      Formula.define("τ")
          .meaning("shear along the glue line of a built-up section")
          .unit(Unit.MPA)
          .where("V", "shear force", Unit.N)
          .where("S_1", "first moment of what lies beyond the line", Unit.MM3)
          .where("I", "second moment of area of the whole", Unit.MM4)
          .where("b", "width of the line", Unit.MM)
          .as("V*S_1/(I*b)")
          .source(Source.derived("beam theory"));

  private static final Formula LAYERS =
      Formula.define("τ")
          .meaning("shear along the glue line between layers")
          .unit(Unit.MPA)
          .where("V", "shear force", Unit.N)
          .where("ES_1", "Σ E·A·z of what lies beyond the line, for each millimetre", Unit.N)
          .where("EI_1", "bending stiffness of the whole, for each millimetre", Unit.N_MM)
          .where("b", "width of the line", Unit.MM)
          .as("V*ES_1/(EI_1*b)")
          .source(Source.derived("beam theory, layers of different moduli"));

  private static final Formula END_FORCE =
      Formula.define("F")
          .meaning("force that the line of a glued-on piece must build up")
          .unit(Unit.N)
          .where("M", "moment where the piece begins to count", Unit.N_MM)
          .where("S_1", "first moment of the glued-on piece", Unit.MM3)
          .where("I", "second moment of area of the whole", Unit.MM4)
          .as("M*S_1/I")
          .source(Source.derived("beam theory: the axial force in the piece"));

  private static final Formula END_STRESS =
      Formula.define("τ_end")
          .meaning("shear on the line of a glued-on piece, twice the mean: it peaks at the end")
          .unit(Unit.MPA)
          .where("F", "force to build up", Unit.N)
          .where("b", "width of the line", Unit.MM)
          .where("l", "length of the piece", Unit.MM)
          .as("2*F/(b*l)")
          .source(Source.projectDefault("peak taken as twice the mean, stress falling linearly"));

  private static final Formula LOCKED =
      Formula.define("σ_90")
          .meaning("stress across the grain where wood is kept from moving")
          .unit(Unit.MPA)
          .where("E_90", "modulus across the grain", Unit.MPA)
          .where("c_s", "movement per percentage point of moisture", Unit.ONE)
          .where("ΔMC", "change of moisture content", Unit.POINT)
          .where("r", "share that creep and slip leave", Unit.ONE)
          .as("r*E_90*c_s*ΔMC")
          .source(Source.projectDefault("elastic estimate; about half relaxes, judgement"));

  private Laminations() {}

  /** Shear along a glue line, MPa. */
  public static double shear(Pad pad, double v, double first, double inertia, double b) {
    return pad.take(SHEAR, v, first, inertia, b);
  }

  /**
   * Shear along the line between layers of different moduli, MPa.
   *
   * @param first Σ E·A·z of the layers beyond the line for a width of 1 mm, N
   * @param stiffness bending stiffness of all layers for a width of 1 mm, N·mm
   */
  public static double layers(Pad pad, double v, double first, double stiffness, double b) {
    return pad.take(LAYERS, v, first, stiffness, b);
  }

  /** Shear along the line of a glued-on piece of limited length, MPa. */
  public static double gluedOn(
      Pad pad, double moment, double first, double inertia, double b, double length) {
    double force = pad.take(END_FORCE, Math.abs(moment), first, inertia);
    return pad.take(END_STRESS, force, b, length);
  }

  /**
   * Stress across the grain of a solid top that a glued end cap or lipping keeps from moving, MPa.
   *
   * @param remains share left after creep and slip, about 0.5; 0 for a cap that may slide
   */
  public static double locked(
      Pad pad, double across, double coefficient, double points, double remains) {
    return pad.take(LOCKED, across, coefficient, points, remains);
  }
}
