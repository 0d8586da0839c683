package org.stoutwork.fastener.lateral;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Strength of wood under the shank of a fastener. */
public final class Embedment {

  private static final Formula ALONG =
      Formula.define("f_{h,0,k}")
          .meaning("bearing strength under a bolt or dowel, or in a drilled hole")
          .unit(Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("0.082*(1 - 0.01*d)*ρ_k")
          .source(Documents.ec5("8.5.1.1 (8.32), 8.3.1.1 (8.16)"));

  private static final Formula DRIVEN =
      Formula.define("f_{h,k}")
          .meaning("bearing strength under a nail driven without drilling")
          .unit(Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("0.082*ρ_k*d^-0.3")
          .source(Documents.ec5("8.3.1.1 (8.15)"));

  private static final Formula PLYWOOD =
      Formula.define("f_{h,k}")
          .meaning("bearing strength of plywood")
          .unit(Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("0.11*(1 - 0.01*d)*ρ_k")
          .source(Documents.ec5("8.5.1.2 (8.36)"));

  private static final Formula BOARD =
      Formula.define("f_{h,k}")
          .meaning("bearing strength of particleboard and OSB")
          .unit(Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .where("t", "panel thickness", Unit.MM)
          .fitted("50*d^-0.6*t^0.2")
          .source(Documents.ec5("8.5.1.3 (8.37)"));

  private static final Formula K90_SOFT = grainFactor("1.35 + 0.015*d", "softwood");
  private static final Formula K90_HARD = grainFactor("0.90 + 0.015*d", "hardwood");

  private static final Formula ANGLED =
      Formula.define("f_{h,α,k}")
          .meaning("bearing strength at an angle to the grain")
          .unit(Unit.MPA)
          .where("f_{h,0,k}", "along the grain", Unit.MPA)
          .where("k_90", "grain factor", Unit.ONE)
          .where("α", "angle to the grain", Unit.RAD)
          .as("f_{h,0,k}/(k_90*sin(α)^2 + cos(α)^2)")
          .source(Documents.ec5("8.5.1.1 (8.31)"));

  private static final Formula NDS_ALONG =
      Formula.define("F_{e,∥}")
          .meaning("dowel bearing strength along the grain")
          .unit(Unit.PSI)
          .where("G", "specific gravity", Unit.ONE)
          .fitted("11200*G")
          .source(Documents.nds("Table 12.3.3"));

  private static final Formula NDS_ACROSS =
      Formula.define("F_{e,⊥}")
          .meaning("dowel bearing strength across the grain")
          .unit(Unit.PSI)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "diameter", Unit.IN)
          .fitted("6100*G^1.45/sqrt(D)")
          .source(Documents.nds("Table 12.3.3"));

  private static final Formula NDS_SMALL =
      Formula.define("F_e")
          .meaning("dowel bearing strength below 1/4 in")
          .unit(Unit.PSI)
          .where("G", "specific gravity", Unit.ONE)
          .fitted("16600*G^1.84")
          .source(Documents.nds("Table 12.3.3"));

  private static final Formula HANKINSON =
      Formula.define("F_{e,θ}")
          .meaning("dowel bearing strength at an angle to the grain")
          .unit(Unit.PSI)
          .where("F_{e,∥}", "along", Unit.PSI)
          .where("F_{e,⊥}", "across", Unit.PSI)
          .where("θ", "angle to the grain", Unit.RAD)
          .as("F_{e,∥}*F_{e,⊥}/(F_{e,∥}*sin(θ)^2 + F_{e,⊥}*cos(θ)^2)")
          .source(Documents.nds("12.3.4"));

  private Embedment() {}

  private static Formula grainFactor(String text, String kind) {
    return Formula.define("k_90")
        .meaning("grain factor, " + kind)
        .where("d", "diameter", Unit.MM)
        .fitted(text)
        .source(Documents.ec5("8.5.1.1 (8.33)"));
  }

  /** EN 1995-1-1, along the grain or in a drilled hole, MPa. */
  public static double along(Pad pad, double d, double density) {
    return pad.take(ALONG, d, density);
  }

  /** EN 1995-1-1, nail driven without drilling, MPa. */
  public static double driven(Pad pad, double d, double density) {
    return pad.take(DRIVEN, d, density);
  }

  /** EN 1995-1-1, plywood, MPa. */
  public static double plywood(Pad pad, double d, double density) {
    return pad.take(PLYWOOD, d, density);
  }

  /** EN 1995-1-1, particleboard and OSB, MPa. */
  public static double board(Pad pad, double d, double thickness) {
    return pad.take(BOARD, d, thickness);
  }

  /** Grain factor k_90 of EN 1995-1-1. */
  public static double grainFactor(Pad pad, double d, boolean hardwood) {
    return pad.take(hardwood ? K90_HARD : K90_SOFT, d);
  }

  /** EN 1995-1-1, bolt, dowel or peg at an angle in degrees to the grain, MPa. */
  public static double ec5(Pad pad, double d, double density, double degrees, boolean hardwood) {
    double along = along(pad, d, density);
    double k90 = grainFactor(pad, d, hardwood);
    return pad.take(ANGLED, along, k90, Math.toRadians(degrees));
  }

  /** NDS, at an angle in degrees to the grain, MPa. */
  public static double nds(Pad pad, double gravity, double d, double degrees) {
    double inches = Unit.MM.convert(d, Unit.IN);
    if (inches < 0.25) {
      return Unit.PSI.convert(pad.take(NDS_SMALL, gravity), Unit.MPA);
    }
    double along = pad.take(NDS_ALONG, gravity);
    double across = pad.take(NDS_ACROSS, gravity, inches);
    double psi = pad.take(HANKINSON, along, across, Math.toRadians(degrees));
    return Unit.PSI.convert(psi, Unit.MPA);
  }
}
