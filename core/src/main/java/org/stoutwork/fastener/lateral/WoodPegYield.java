package org.stoutwork.fastener.lateral;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Wood pegs in double shear: the NDS modes with bearing and bending values of wood pegs, and a
 * fifth mode in which the peg shears across its grain. Tested for hardwood pegs of 19 to 32 mm with
 * G of at least 0.57 in timber that is no denser; smaller pegs are extrapolated.
 */
public final class WoodPegYield {

  /** Smallest tested diameter, 3/4 in, mm. */
  public static final double SMALLEST = 19.05;

  /** Largest tested diameter, 1 1/4 in, mm. */
  public static final double LARGEST = 31.75;

  private static final Formula ALONG =
      Formula.define("F_{e,∥}")
          .meaning("bearing of peg and tenon along the grain")
          .unit(Unit.PSI)
          .where("G_p", "specific gravity of the peg", Unit.ONE)
          .fitted("4770*G_p^1.32")
          .source(Documents.tfec("dowel bearing of wood pegs"));

  private static final Formula ACROSS =
      Formula.define("F_{e,⊥}")
          .meaning("bearing of peg and post across the grain")
          .unit(Unit.PSI)
          .where("G_p", "specific gravity of the peg", Unit.ONE)
          .where("G_t", "specific gravity of the timber", Unit.ONE)
          .fitted("4900*G_p*sqrt(G_t)")
          .source(Documents.tfec("dowel bearing of wood pegs"));

  private static final Formula BENDING =
      Formula.define("F_yb")
          .meaning("bending yield of the peg")
          .unit(Unit.PSI)
          .where("G_p", "specific gravity of the peg", Unit.ONE)
          .fitted("24850*G_p^1.13")
          .source(Documents.tfec("bending yield of wood pegs"));

  private static final Formula SHEAR =
      Formula.define("F_v")
          .meaning("allowable cross-shear stress of the peg")
          .unit(Unit.PSI)
          .where("G_p", "specific gravity of the peg", Unit.ONE)
          .where("G_t", "specific gravity of the timber", Unit.ONE)
          .fitted("1365*G_p*G_t^0.75")
          .source(Documents.tfec("mode V"));

  private static final Formula SHEAR_YIELD =
      Formula.define("F_vy")
          .meaning("cross-shear stress of the peg at the 5 % offset")
          .unit(Unit.PSI)
          .where("G_p", "specific gravity of the peg", Unit.ONE)
          .where("G_t", "specific gravity of the timber", Unit.ONE)
          .fitted("4850*G_p*G_t^0.75")
          .source(
              Source.fromMemory(
                  "Miller, Schmidt, Bulleit, J. Struct. Eng. 136 (2010)", "peg shear"));

  private static final Formula MODE_V =
      Formula.define("Z_V")
          .meaning("the peg shears on two planes")
          .unit(Unit.N)
          .where("D", "diameter", Unit.MM)
          .where("F_v", "shear stress", Unit.MPA)
          .as("2*π*D^2/4*F_v")
          .source(Documents.tfec("mode V"));

  private WoodPegYield() {}

  private static double mpa(double psi) {
    return Unit.PSI.convert(psi, Unit.MPA);
  }

  /** Bearing along the grain, MPa. */
  public static double along(Pad pad, double peg) {
    return mpa(pad.take(ALONG, peg));
  }

  /** Bearing across the grain, MPa. */
  public static double across(Pad pad, double peg, double timber) {
    return mpa(pad.take(ACROSS, peg, timber));
  }

  /** Bending yield, MPa. */
  public static double bending(Pad pad, double peg) {
    return mpa(pad.take(BENDING, peg));
  }

  /** Allowable cross-shear stress, MPa. */
  public static double shear(Pad pad, double peg, double timber) {
    return mpa(pad.take(SHEAR, peg, timber));
  }

  /** Cross-shear stress at yield, MPa. */
  public static double shearYield(Pad pad, double peg, double timber) {
    return mpa(pad.take(SHEAR_YIELD, peg, timber));
  }

  /** Force on two planes at a shear stress, N. */
  public static double crossShear(Pad pad, double d, double stress) {
    return pad.take(MODE_V, d, stress);
  }

  /**
   * Allowable forces of one peg through a tenon pulled along its grain, at normal load duration.
   *
   * @param d mm
   * @param tenon thickness t, mm
   * @param cheek thickness of each mortise wall, mm
   * @param peg specific gravity of the peg
   * @param timber specific gravity of the timber
   */
  public static YieldModes allowable(
      Pad pad, double d, double tenon, double cheek, double peg, double timber) {
    if (d < SMALLEST || d > LARGEST || timber > peg) {
      pad.remark("Extrapolated: tested for pegs of 19 to 32 mm in timber no denser than the peg.");
    }
    double fem = along(pad, peg);
    double fes = across(pad, peg, timber);
    YieldModes bent =
        NdsYield.doubled(
            pad, d, tenon, cheek, fem, fes, bending(pad, peg), NdsYield.Reduction.ofPegs());
    List<YieldModes.Mode> all = new ArrayList<>(bent.modes());
    all.add(new YieldModes.Mode("V", crossShear(pad, d, shear(pad, peg, timber))));
    return new YieldModes(all);
  }
}
