package org.stoutwork.wood.design;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/**
 * The formulas of allowable stresses from clear wood (ASTM D245 and D2555, from memory). Stresses
 * in MPa; divisors above 1, ratios for growth above 0 and up to 1.
 */
public final class AllowableFormulas {

  private static final Source METHOD =
      Source.fromMemory("ASTM D245 and D2555", "from clear wood to allowable stress");

  /**
   * Allowable bending stress: 5 % exclusion value, divisor for safety and ten years, strength ratio
   * for growth, load duration factor.
   */
  public static final Formula BENDING = stress("f_m", "allowable bending stress");

  static final Formula COMPRESSION = stress("f_{c,0}", "allowable compression along the grain");

  /** Allowable shear stress along the grain, of the same values as {@link #BENDING}. */
  public static final Formula SHEAR = stress("f_v", "allowable shear stress");

  static final Formula TENSION_PERPENDICULAR =
      stress("f_{t,90}", "allowable tension across the grain");

  static final Formula TENSION =
      begin("f_{t,0}", "allowable tension along the grain")
          .where("SR", "strength ratio in bending", Unit.ONE)
          .where("C_D", "load duration factor", Unit.ONE)
          .as("X_{05}/n*0.55*SR*C_D")
          .source(
              Source.fromMemory(
                  "ASTM D245", "tension ratio 0.55 of the bending ratio, on the bending strength"));

  static final Formula COMPRESSION_PERPENDICULAR =
      Formula.define("f_{c,90}")
          .meaning("allowable compression across the grain; neither growth nor duration counts")
          .unit(Unit.MPA)
          .where("X", "mean at the moisture content", Unit.MPA)
          .where("n", "divisor", Unit.ONE)
          .as("X/n")
          .source(METHOD);

  static final Formula ROLLING_SHEAR =
      Formula.define("f_r")
          .meaning("allowable rolling shear stress")
          .unit(Unit.MPA)
          .where("f_v", "allowable shear stress along the grain", Unit.MPA)
          .as("0.18*f_v")
          .source(
              Source.fromMemory(
                  "Wood Handbook FPL-GTR-190 (2010)",
                  "chapter 5: rolling shear 18 to 28 % of shear along the grain"));

  static final Formula MODULUS_MEAN =
      Formula.define("E_{mean}")
          .meaning("mean modulus with growth")
          .unit(Unit.MPA)
          .where("E_L", "modulus along the grain", Unit.MPA)
          .where("SR", "ratio for growth", Unit.ONE)
          .as("E_L*SR")
          .source(Source.fromMemory("ASTM D245", "quality factor of the modulus"));

  static final Formula SHEAR_MODULUS =
      Formula.define("G_{mean}")
          .meaning("mean shear modulus, the smaller of the two planes along the grain")
          .unit(Unit.MPA)
          .where("E_{mean}", "mean modulus", Unit.MPA)
          .where("g_{LR}", "G_LR/E_L", Unit.ONE)
          .where("g_{LT}", "G_LT/E_L", Unit.ONE)
          .as("E_{mean}*min(g_{LR}, g_{LT})")
          .source(Source.derived("definition of the elastic ratios"));

  static final Formula MODULUS_ACROSS =
      Formula.define("E_{90}")
          .meaning("mean modulus across the grain, the smaller of the two directions")
          .unit(Unit.MPA)
          .where("E_{mean}", "mean modulus", Unit.MPA)
          .where("e_R", "E_R/E_L", Unit.ONE)
          .where("e_T", "E_T/E_L", Unit.ONE)
          .as("E_{mean}*min(e_R, e_T)")
          .source(Source.derived("definition of the elastic ratios"));

  static final Formula DENSITY_LOW =
      Formula.define("ρ_k")
          .meaning("5 % density")
          .unit(Unit.KG_PER_M3)
          .where("ρ", "mean density", Unit.KG_PER_M3)
          .where("v", "coefficient of variation", Unit.ONE)
          .as("ρ*(1 - 1.645*v)")
          .source(Source.fromMemory("ASTM D2555", "5 % exclusion limit"));

  static final Formula SEASONED =
      Formula.define("P_s")
          .meaning("mean, with the gain by drying held back for knots and checks")
          .unit(Unit.MPA)
          .where("P", "mean of clear wood at the moisture content", Unit.MPA)
          .where("s", "most gain by drying", Unit.ONE)
          .where("P_g", "green mean", Unit.MPA)
          .as("min(P, s*P_g)")
          .source(Source.fromMemory("ASTM D245", "modification for seasoning effects"));

  private AllowableFormulas() {}

  private static Formula.Builder begin(String symbol, String meaning) {
    return Formula.define(symbol)
        .meaning(meaning)
        .unit(Unit.MPA)
        .where("X_{05}", "5 % exclusion value", Unit.MPA)
        .where("n", "divisor", Unit.ONE);
  }

  private static Formula stress(String symbol, String meaning) {
    return begin(symbol, meaning)
        .where("SR", "strength ratio for growth", Unit.ONE)
        .where("C_D", "load duration factor", Unit.ONE)
        .as("X_{05}/n*SR*C_D")
        .source(METHOD);
  }
}
