package org.stoutwork.fastener.lateral;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Yield modes of EN 1995-1-1 8.2.2, timber to timber, per shear plane. Piece 1 is the outer or
 * head-side piece, piece 2 the inner or point-side piece.
 */
public final class Johansen {

  private static final Source CLAUSE = Documents.ec5("8.2.2 (8.6), (8.7)");

  private static final Formula BETA =
      Formula.define("β")
          .meaning("ratio of the bearing strengths")
          .where("f_h1", "piece 1", Unit.MPA)
          .where("f_h2", "piece 2", Unit.MPA)
          .as("f_h2/f_h1")
          .source(CLAUSE);

  private static final Formula CRUSH_1 =
      start("1", "piece 1 crushes")
          .where("t_1", "thickness 1", Unit.MM)
          .as("f_h1*d*t_1")
          .source(CLAUSE);

  private static final Formula CRUSH_2 =
      Formula.define("F_2")
          .meaning("piece 2 crushes; half of it per plane in double shear")
          .unit(Unit.N)
          .where("r", "1 in single, 0.5 in double shear", Unit.ONE)
          .where("f_h2", "bearing of piece 2", Unit.MPA)
          .where("t_2", "thickness 2", Unit.MM)
          .where("d", "diameter", Unit.MM)
          .as("r*f_h2*t_2*d")
          .source(CLAUSE);

  private static final Formula TURN =
      start("c", "the fastener turns in both pieces")
          .where("t_1", "thickness 1", Unit.MM)
          .where("t_2", "thickness 2", Unit.MM)
          .where("β", "ratio of bearing strengths", Unit.ONE)
          .as(
              "f_h1*d*t_1/(1 + β)*(sqrt(β + 2*β^2*(1 + t_2/t_1 + (t_2/t_1)^2)"
                  + " + β^3*(t_2/t_1)^2) - β*(1 + t_2/t_1))")
          .source(CLAUSE);

  private static final Formula ONE_HINGE_1 =
      start("d", "one hinge, piece 1 crushes along its length")
          .where("t_1", "thickness 1", Unit.MM)
          .where("β", "ratio of bearing strengths", Unit.ONE)
          .where("M_y", "yield moment", Unit.N_MM)
          .as(
              "1.05*f_h1*d*t_1/(2 + β)*(sqrt(2*β*(1 + β)"
                  + " + 4*β*(2 + β)*M_y/(f_h1*d*t_1^2)) - β)")
          .source(CLAUSE);

  private static final Formula ONE_HINGE_2 =
      start("e", "one hinge, piece 2 crushes along its length")
          .where("t_2", "thickness 2", Unit.MM)
          .where("β", "ratio of bearing strengths", Unit.ONE)
          .where("M_y", "yield moment", Unit.N_MM)
          .as(
              "1.05*f_h1*d*t_2/(1 + 2*β)*(sqrt(2*β^2*(1 + β)"
                  + " + 4*β*(1 + 2*β)*M_y/(f_h1*d*t_2^2)) - β)")
          .source(CLAUSE);

  private static final Formula TWO_HINGES =
      start("f", "a hinge in each piece")
          .where("β", "ratio of bearing strengths", Unit.ONE)
          .where("M_y", "yield moment", Unit.N_MM)
          .as("1.15*sqrt(2*β/(1 + β))*sqrt(2*M_y*f_h1*d)")
          .source(CLAUSE);

  private static final Formula ROPE =
      Formula.define("F_v")
          .meaning("with the rope effect, limited to a share of the yield force")
          .unit(Unit.N)
          .where("F_J", "yield force", Unit.N)
          .where("F_ax", "withdrawal capacity", Unit.N)
          .where("r", "largest share", Unit.ONE)
          .as("F_J + min(F_ax/4, r*F_J)")
          .source(Documents.ec5("8.2.2(2)"));

  private static final Formula STEEL_MOMENT =
      Formula.define("M_{y,Rk}")
          .meaning("yield moment of a round steel fastener")
          .unit(Unit.N_MM)
          .where("f_u", "tensile strength of the steel", Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .fitted("0.3*f_u*d^2.6")
          .source(Documents.ec5("8.5.1.1 (8.30)"));

  private static final Formula WOOD_MOMENT =
      Formula.define("M_y")
          .meaning("plastic moment of a round wood peg")
          .unit(Unit.N_MM)
          .where("f_m", "bending strength of the peg", Unit.MPA)
          .where("d", "diameter", Unit.MM)
          .as("f_m*d^3/6")
          .source(Source.derived("plastic bending of a circle"));

  private Johansen() {}

  private static Formula.Builder start(String mode, String words) {
    return Formula.define("F_" + mode)
        .meaning(words)
        .unit(Unit.N)
        .where("f_h1", "bearing of piece 1", Unit.MPA)
        .where("d", "diameter", Unit.MM);
  }

  /** Ratio of the bearing strengths. */
  public static double beta(Pad pad, double fh1, double fh2) {
    return pad.take(BETA, fh1, fh2);
  }

  /**
   * Single shear, modes a to f.
   *
   * @param fax withdrawal capacity, N
   * @param ropeShare largest share of the yield force that the rope effect may add
   */
  public static YieldModes single(
      Pad pad,
      double t1,
      double t2,
      double d,
      double fh1,
      double fh2,
      double my,
      double fax,
      double ropeShare) {
    double b = beta(pad, fh1, fh2);
    return new YieldModes(
        List.of(
            new YieldModes.Mode("a", pad.take(CRUSH_1, fh1, d, t1)),
            new YieldModes.Mode("b", pad.take(CRUSH_2, 1, fh2, t2, d)),
            roped(pad, "c", pad.take(TURN, fh1, d, t1, t2, b), fax, ropeShare),
            roped(pad, "d", pad.take(ONE_HINGE_1, fh1, d, t1, b, my), fax, ropeShare),
            roped(pad, "e", pad.take(ONE_HINGE_2, fh1, d, t2, b, my), fax, ropeShare),
            roped(pad, "f", pad.take(TWO_HINGES, fh1, d, b, my), fax, ropeShare)));
  }

  /** Double shear, modes g to k, per shear plane; piece 2 is in the middle. */
  public static YieldModes doubled(
      Pad pad,
      double t1,
      double t2,
      double d,
      double fh1,
      double fh2,
      double my,
      double fax,
      double ropeShare) {
    double b = beta(pad, fh1, fh2);
    return new YieldModes(
        List.of(
            new YieldModes.Mode("g", pad.take(CRUSH_1, fh1, d, t1)),
            new YieldModes.Mode("h", pad.take(CRUSH_2, 0.5, fh2, t2, d)),
            roped(pad, "j", pad.take(ONE_HINGE_1, fh1, d, t1, b, my), fax, ropeShare),
            roped(pad, "k", pad.take(TWO_HINGES, fh1, d, b, my), fax, ropeShare)));
  }

  private static YieldModes.Mode roped(
      Pad pad, String name, double yield, double fax, double share) {
    return new YieldModes.Mode(
        name, fax > 0 && share > 0 ? pad.take(ROPE, yield, fax, share) : yield);
  }

  /** Yield moment of a round steel fastener, N·mm; 1.1 times the core of a screw as diameter. */
  public static double steelMoment(Pad pad, double fu, double d) {
    return pad.take(STEEL_MOMENT, fu, d);
  }

  /** Plastic moment of a round wood peg, N·mm. EN 1995-1-1 gives none. */
  public static double woodMoment(Pad pad, double fm, double d) {
    return pad.take(WOOD_MOMENT, fm, d);
  }
}
