package org.stoutwork.fastener.withdrawal;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Smooth nails pulled out of side grain and their heads pulled through, by EN 1995-1-1. */
public final class NailWithdrawal {

  /** Reach in the point-side piece below which nothing holds, in diameters. */
  public static final double LEAST_REACH = 8;

  private static final double FULL_REACH = 12;

  private static final Formula STRENGTH =
      Formula.define("f_{ax,k}")
          .meaning("withdrawal strength of a smooth nail")
          .unit(Unit.MPA)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("20e-6*ρ_k^2")
          .source(Documents.ec5("8.3.2 (8.25)"));

  private static final Formula HEAD =
      Formula.define("f_{head,k}")
          .meaning("pull-through strength of a nail head")
          .unit(Unit.MPA)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("70e-6*ρ_k^2")
          .source(Documents.ec5("8.3.2 (8.26)"));

  private static final Formula REACH =
      Formula.define("k_t")
          .meaning("reach of less than 12 d")
          .where("t_pen", "reach", Unit.MM)
          .where("d", "nail", Unit.MM)
          .as("min(1, t_pen/(4*d) - 2)")
          .source(Documents.ec5("8.3.2(7)"));

  private static final Formula POINT =
      Formula.define("F_{ax,Rk}")
          .meaning("characteristic pull of a nail out of the point-side piece")
          .unit(Unit.N)
          .where("f_{ax,k}", "withdrawal strength", Unit.MPA)
          .where("d", "nail", Unit.MM)
          .where("t_pen", "reach", Unit.MM)
          .where("k_t", "short reach", Unit.ONE)
          .as("f_{ax,k}*d*t_pen*k_t")
          .source(Documents.ec5("8.3.2 (8.24)"));

  private static final Formula THROUGH =
      Formula.define("F_{head,Rk}")
          .meaning("characteristic force of a smooth nail and its head in the head-side piece")
          .unit(Unit.N)
          .where("f_{ax,k}", "withdrawal strength", Unit.MPA)
          .where("d", "nail", Unit.MM)
          .where("t", "thickness of that piece", Unit.MM)
          .where("f_{head,k}", "pull-through strength", Unit.MPA)
          .where("d_h", "head", Unit.MM)
          .as("f_{ax,k}*d*t + f_{head,k}*d_h^2")
          .source(Documents.ec5("8.3.2 (8.24)"));

  private NailWithdrawal() {}

  /** Characteristic pull out of side grain, N; 0 below eight diameters of reach. */
  public static double point(Pad pad, double d, double reach, double density) {
    if (reach < LEAST_REACH * d) {
      pad.remark("EN 1995-1-1 counts no smooth nail that reaches in less than 8 d.");
      return 0;
    }
    double f = pad.take(STRENGTH, density);
    double k = reach < FULL_REACH * d ? pad.take(REACH, reach, d) : 1;
    return pad.take(POINT, f, d, reach, k);
  }

  /** Characteristic force of shank and head in the head-side piece, N. */
  public static double head(Pad pad, double d, double head, double thickness, double density) {
    double f = pad.take(STRENGTH, density);
    return pad.take(THROUGH, f, d, thickness, pad.take(HEAD, density), head);
  }
}
