package org.stoutwork.fastener.withdrawal;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Threads pulled out of wood, by EN 1995-1-1, by the NDS and at failure by the Wood Handbook. */
public final class ScrewWithdrawal {

  private static final Formula EC5_STRENGTH =
      Formula.define("f_{ax,k}")
          .meaning("withdrawal strength of the thread")
          .unit(Unit.MPA)
          .where("d", "thread diameter", Unit.MM)
          .where("l_ef", "length of thread in the wood", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("0.52*d^-0.5*l_ef^-0.1*ρ_k^0.8")
          .source(Documents.ec5("8.7.2 (8.39)"));

  private static final Formula EC5_SMALL =
      Formula.define("k_d")
          .meaning("small screws")
          .where("d", "thread diameter", Unit.MM)
          .fitted("min(1, d/8)")
          .source(Documents.ec5("8.7.2 (8.40)"));

  private static final Formula EC5_GROUP =
      Formula.define("n_ef")
          .meaning("effective number of screws pulled together")
          .where("n", "number", Unit.ONE)
          .as("n^0.9")
          .source(Documents.ec5("8.7.2 (8.41)"));

  private static final Formula EC5_FORCE =
      Formula.define("F_{ax,Rk}")
          .meaning("characteristic withdrawal force")
          .unit(Unit.N)
          .where("n_ef", "effective number", Unit.ONE)
          .where("f_{ax,k}", "withdrawal strength", Unit.MPA)
          .where("d", "thread diameter", Unit.MM)
          .where("l_ef", "length of thread in the wood", Unit.MM)
          .where("k_d", "small screws", Unit.ONE)
          .where("α", "angle to the grain, at least 30°", Unit.RAD)
          .as("n_ef*f_{ax,k}*d*l_ef*k_d/(1.2*cos(α)^2 + sin(α)^2)")
          .source(Documents.ec5("8.7.2 (8.38)"));

  private static final Formula LAG =
      Formula.define("W")
          .meaning("allowable withdrawal of a coach screw from side grain")
          .unit(Unit.LBF_PER_IN)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "shank diameter", Unit.IN)
          .fitted("1800*G^1.5*D^0.75")
          .source(Documents.nds("12.2.1 (12.2-1)"));

  private static final Formula SCREW =
      Formula.define("W")
          .meaning("allowable withdrawal of a wood screw from side grain")
          .unit(Unit.LBF_PER_IN)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "thread diameter", Unit.IN)
          .fitted("2850*G^2*D")
          .source(Documents.nds("12.2.2 (12.2-2)"));

  private static final Formula NAIL =
      Formula.define("W")
          .meaning("allowable withdrawal of a nail from side grain")
          .unit(Unit.LBF_PER_IN)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "nail diameter", Unit.IN)
          .fitted("1380*G^2.5*D")
          .source(Documents.nds("12.2.3 (12.2-3)"));

  private static final Formula US_FORCE =
      Formula.define("W′")
          .meaning("allowable withdrawal force")
          .unit(Unit.LBF)
          .where("W", "per inch", Unit.LBF_PER_IN)
          .where("p_t", "thread in the wood without the tip", Unit.IN)
          .where("C_D", "load duration", Unit.ONE)
          .where("C_eg", "end grain: 0.75 for coach screws, else 1", Unit.ONE)
          .as("W*p_t*C_D*C_eg")
          .source(Documents.nds("Table 11.3.1"));

  private static final Formula LAG_ULTIMATE =
      Formula.define("P_u")
          .meaning("withdrawal force of a coach screw at failure")
          .unit(Unit.LBF)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "shank diameter", Unit.IN)
          .where("L", "thread in the wood", Unit.IN)
          .fitted("8100*G^1.5*D^0.75*L")
          .source(Documents.woodHandbook("ch. 8"));

  private static final Formula SCREW_ULTIMATE =
      Formula.define("P_u")
          .meaning("withdrawal force of a wood screw at failure")
          .unit(Unit.LBF)
          .where("G", "specific gravity", Unit.ONE)
          .where("D", "shank diameter", Unit.IN)
          .where("L", "thread in the wood", Unit.IN)
          .fitted("15700*G^2*D*L")
          .source(Documents.woodHandbook("ch. 8"));

  private ScrewWithdrawal() {}

  private static double inches(double mm) {
    return Unit.MM.convert(mm, Unit.IN);
  }

  private static double newtons(double lbf) {
    return Unit.LBF.convert(lbf, Unit.N);
  }

  /**
   * EN 1995-1-1, characteristic, N. Valid for 6 to 12 mm and a core of 0.6 to 0.75 of the thread;
   * for other screws the maker declares the strength.
   *
   * @throws IllegalArgumentException if the angle is below 30° or the thread shorter than 6 d
   */
  public static double ec5(
      Pad pad, double d, double thread, double density, double degrees, int n) {
    if (!(degrees >= 30)) {
      throw new IllegalArgumentException(
          "a screw pulled at %s° to the grain is outside EN 1995-1-1: at least 30°"
              .formatted(degrees));
    }
    if (!(thread >= 6 * d)) {
      throw new IllegalArgumentException(
          "thread of %s mm in the wood: EN 1995-1-1 asks for at least 6 d = %s mm"
              .formatted(thread, 6 * d));
    }
    if (d < 6 || d > 12) {
      pad.remark("Outside 6 to 12 mm: the maker's declared strength should be used.");
    }
    double fax = strength(pad, d, thread, density);
    double kd = pad.take(EC5_SMALL, d);
    double nef = pad.take(EC5_GROUP, n);
    return pad.take(EC5_FORCE, nef, fax, d, thread, kd, Math.toRadians(degrees));
  }

  /** Withdrawal strength of EN 1995-1-1, MPa. */
  public static double strength(Pad pad, double d, double thread, double density) {
    return pad.take(EC5_STRENGTH, d, thread, density);
  }

  /** Effective number of EN 1995-1-1. */
  public static double effectiveNumber(Pad pad, int n) {
    return pad.take(EC5_GROUP, n);
  }

  /** Small-screw factor of EN 1995-1-1. */
  public static double smallScrew(Pad pad, double d) {
    return pad.take(EC5_SMALL, d);
  }

  /** NDS, coach screw, allowable, N. */
  public static double lag(
      Pad pad, double gravity, double d, double thread, double duration, boolean endGrain) {
    double perInch = pad.take(LAG, gravity, inches(d));
    return newtons(pad.take(US_FORCE, perInch, inches(thread), duration, endGrain ? 0.75 : 1));
  }

  /** NDS, wood screw in side grain, allowable, N. The NDS allows none in end grain. */
  public static double screw(Pad pad, double gravity, double d, double thread, double duration) {
    double perInch = pad.take(SCREW, gravity, inches(d));
    return newtons(pad.take(US_FORCE, perInch, inches(thread), duration, 1));
  }

  /** NDS, smooth nail in side grain, allowable, N. */
  public static double nail(Pad pad, double gravity, double d, double in, double duration) {
    double perInch = pad.take(NAIL, gravity, inches(d));
    return newtons(pad.take(US_FORCE, perInch, inches(in), duration, 1));
  }

  /** Wood Handbook, coach screw at failure, N. */
  public static double lagUltimate(Pad pad, double gravity, double d, double thread) {
    return newtons(pad.take(LAG_ULTIMATE, gravity, inches(d), inches(thread)));
  }

  /** Wood Handbook, wood screw at failure, N. */
  public static double screwUltimate(Pad pad, double gravity, double d, double thread) {
    return newtons(pad.take(SCREW_ULTIMATE, gravity, inches(d), inches(thread)));
  }
}
