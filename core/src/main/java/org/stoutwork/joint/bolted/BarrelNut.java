package org.stoutwork.joint.bolted;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The nut in the rail: wood bearing behind it and the plug between it and the rail's end. */
public final class BarrelNut {

  private static final Formula BEARING =
      Formula.define("F_b")
          .meaning("wood bearing on the nut along the grain")
          .unit(Unit.N)
          .where("f_{h,0}", "bearing strength along the grain", Unit.MPA)
          .where("d_n", "nut diameter", Unit.MM)
          .where("l_n", "nut length", Unit.MM)
          .as("f_{h,0}*d_n*l_n")
          .source(Source.fromMemory("EN 1995-1-1:2004+A1:2008", "8.5.1.1, the nut as a dowel"));

  private static final Formula SHEAR_OUT =
      Formula.define("F_s")
          .meaning("plug between nut and rail end shears out")
          .unit(Unit.N)
          .where("f_v", "shear strength of the rail", Unit.MPA)
          .where("a_e", "distance of the nut from the rail's end", Unit.MM)
          .where("l_n", "nut length", Unit.MM)
          .where("b", "rail thickness", Unit.MM)
          .as("2*f_v*a_e*min(l_n, b)")
          .source(Source.derived("statics: two planes"));

  private static final Formula DESIGN =
      Formula.define("F_d")
          .meaning("design value")
          .unit(Unit.N)
          .where("F_k", "characteristic", Unit.N)
          .where("k_mod", "duration and moisture", Unit.ONE)
          .where("γ_M", "partial factor", Unit.ONE)
          .as("k_mod*F_k/γ_M")
          .source(Source.fromMemory("EN 1995-1-1:2004+A1:2008", "2.4.3"));

  private static final Formula ALLOWABLE =
      Formula.define("F_a")
          .meaning("allowable value, mode I reduction")
          .unit(Unit.N)
          .where("F", "bearing force at yield", Unit.N)
          .where("C_D", "load duration", Unit.ONE)
          .as("F*C_D/4")
          .source(Source.fromMemory("ANSI/AWC NDS 2018", "Table 12.3.1, mode I, R_d = 4"));

  private BarrelNut() {}

  /** Wood bearing on the nut at the level of the strength given, N. */
  public static double bearing(Pad pad, double fh, double diameter, double length) {
    return pad.take(BEARING, fh, diameter, length);
  }

  /** Plug shearing out at the level of the strength given, N. */
  public static double shearOut(Pad pad, double fv, double fromEnd, double length, double b) {
    return pad.take(SHEAR_OUT, fv, fromEnd, length, b);
  }

  /** A characteristic (or yield) force brought to design level by the family, N. */
  public static double design(Pad pad, double force, StrengthFamily family) {
    if (family instanceof StrengthFamily.PartialFactors p) {
      return pad.take(DESIGN, force, p.kMod(), p.gammaM());
    }
    return pad.take(ALLOWABLE, force, ((StrengthFamily.Allowable) family).loadDuration());
  }
}
