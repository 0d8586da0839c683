package org.stoutwork.fastener.lateral;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Yield modes of the NDS at normal load duration. The main piece m is the middle or point-side one,
 * the side piece s the outer or head-side one. Everything in mm, N, MPa; only the reduction terms
 * know inches.
 */
public final class NdsYield {

  private static final Source TABLE = Documents.nds("Table 12.3.1A");

  private static final Formula RATIO =
      Formula.define("R_e")
          .meaning("ratio of the bearing strengths")
          .where("F_em", "main piece", Unit.MPA)
          .where("F_es", "side piece", Unit.MPA)
          .as("F_em/F_es")
          .source(TABLE);

  private static final Formula K1 =
      Formula.define("k_1")
          .where("R_e", "ratio of bearing strengths", Unit.ONE)
          .where("R_t", "ratio of lengths, main to side", Unit.ONE)
          .as("(sqrt(R_e + 2*R_e^2*(1 + R_t + R_t^2) + R_t^2*R_e^3) - R_e*(1 + R_t))/(1 + R_e)")
          .source(TABLE);

  private static final Formula K2 =
      hinge("k_2", "l_m", "-1 + sqrt(2*(1 + R_e) + 2*F_yb*(1 + 2*R_e)*D^2/(3*F_em*l_m^2))");

  private static final Formula K3 =
      hinge("k_3", "l_s", "-1 + sqrt(2*(1 + R_e)/R_e + 2*F_yb*(2 + R_e)*D^2/(3*F_em*l_s^2))");

  private static final Formula MODE_I =
      Formula.define("Z_I")
          .meaning("a piece crushes")
          .unit(Unit.N)
          .where("n", "1, or 2 for the side pieces in double shear", Unit.ONE)
          .where("D", "diameter", Unit.MM)
          .where("l", "length in the piece", Unit.MM)
          .where("F_e", "its bearing strength", Unit.MPA)
          .where("R_d", "reduction term", Unit.ONE)
          .as("n*D*l*F_e/R_d")
          .source(TABLE);

  private static final Formula MODE_II =
      Formula.define("Z_II")
          .meaning("the fastener turns in both pieces")
          .unit(Unit.N)
          .where("k_1", "factor", Unit.ONE)
          .where("D", "diameter", Unit.MM)
          .where("l_s", "length in the side piece", Unit.MM)
          .where("F_es", "bearing of the side piece", Unit.MPA)
          .where("R_d", "reduction term", Unit.ONE)
          .as("k_1*D*l_s*F_es/R_d")
          .source(TABLE);

  private static final Formula MODE_IIIM =
      Formula.define("Z_IIIm")
          .meaning("one hinge, the main piece crushes")
          .unit(Unit.N)
          .where("k_2", "factor", Unit.ONE)
          .where("D", "diameter", Unit.MM)
          .where("l_m", "length in the main piece", Unit.MM)
          .where("F_em", "bearing of the main piece", Unit.MPA)
          .where("R_e", "ratio", Unit.ONE)
          .where("R_d", "reduction term", Unit.ONE)
          .as("k_2*D*l_m*F_em/((1 + 2*R_e)*R_d)")
          .source(TABLE);

  private static final Formula MODE_IIIS =
      Formula.define("Z_IIIs")
          .meaning("one hinge, the side piece crushes")
          .unit(Unit.N)
          .where("n", "shear planes", Unit.ONE)
          .where("k_3", "factor", Unit.ONE)
          .where("D", "diameter", Unit.MM)
          .where("l_s", "length in the side piece", Unit.MM)
          .where("F_em", "bearing of the main piece", Unit.MPA)
          .where("R_e", "ratio", Unit.ONE)
          .where("R_d", "reduction term", Unit.ONE)
          .as("n*k_3*D*l_s*F_em/((2 + R_e)*R_d)")
          .source(TABLE);

  private static final Formula MODE_IV =
      Formula.define("Z_IV")
          .meaning("a hinge in each piece")
          .unit(Unit.N)
          .where("n", "shear planes", Unit.ONE)
          .where("D", "diameter", Unit.MM)
          .where("R_d", "reduction term", Unit.ONE)
          .where("F_em", "bearing of the main piece", Unit.MPA)
          .where("F_yb", "bending yield of the fastener", Unit.MPA)
          .where("R_e", "ratio", Unit.ONE)
          .as("n*D^2/R_d*sqrt(2*F_em*F_yb/(3*(1 + R_e)))")
          .source(TABLE);

  private NdsYield() {}

  private static Formula hinge(String name, String length, String text) {
    return Formula.define(name)
        .where("R_e", "ratio of bearing strengths", Unit.ONE)
        .where("F_yb", "bending yield of the fastener", Unit.MPA)
        .where("D", "diameter", Unit.MM)
        .where("F_em", "bearing of the main piece", Unit.MPA)
        .where(length, "length in the piece that crushes", Unit.MM)
        .as(text)
        .source(TABLE);
  }

  /**
   * What the NDS divides the yield forces by.
   *
   * @param modeI R_d of modes Im and Is
   * @param modeII R_d of mode II
   * @param modeIII R_d of modes IIIm, IIIs and IV
   */
  public record Reduction(double modeI, double modeII, double modeIII) {

    /** A quarter of an inch, mm. */
    private static final double THIN = 6.35;

    /**
     * NDS Table 12.3.1B.
     *
     * @param d mm
     * @param degrees largest angle of load to grain in either piece
     */
    public static Reduction of(double d, double degrees) {
      double inches = Unit.MM.convert(d, Unit.IN);
      double turned = 1 + 0.25 * degrees / 90;
      if (inches >= 0.25) {
        return new Reduction(4 * turned, 3.6 * turned, 3.2 * turned);
      }
      double small = inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
      return new Reduction(small, small, small);
    }

    /**
     * For a threaded fastener, of which the core yields: the footnote of NDS Table 12.3.1B turns
     * the term of a thin core too where the fastener itself is not thin.
     *
     * @param nominal diameter, mm
     * @param core diameter, mm
     * @param degrees largest angle of load to grain in either piece
     */
    public static Reduction ofThreaded(double nominal, double core, double degrees) {
      Reduction plain = of(core, degrees);
      boolean turns = nominal >= THIN && core < THIN;
      double turned = turns ? 1 + 0.25 * degrees / 90 : 1;
      return new Reduction(
          turned * plain.modeI(), turned * plain.modeII(), turned * plain.modeIII());
    }

    /** For wood pegs through a tenon, whatever their size: the load crosses the post's grain. */
    public static Reduction ofPegs() {
      return new Reduction(5, 4.5, 4);
    }
  }

  /** Ratio of the bearing strengths, main to side piece. */
  public static double ratio(Pad pad, double fem, double fes) {
    return pad.take(RATIO, fem, fes);
  }

  /** Factor of mode II. */
  public static double k1(Pad pad, double re, double rt) {
    return pad.take(K1, re, rt);
  }

  /** Factor of mode IIIm. */
  public static double k2(Pad pad, double re, double fyb, double d, double fem, double lm) {
    return pad.take(K2, re, fyb, d, fem, lm);
  }

  /** Factor of mode IIIs. */
  public static double k3(Pad pad, double re, double fyb, double d, double fem, double ls) {
    return pad.take(K3, re, fyb, d, fem, ls);
  }

  /** Single shear, modes Im to IV. */
  public static YieldModes single(
      Pad pad, double d, double lm, double ls, double fem, double fes, double fyb, double degrees) {
    return single(pad, d, lm, ls, fem, fes, fyb, Reduction.of(d, degrees));
  }

  /** Single shear with given reduction terms. */
  public static YieldModes single(
      Pad pad, double d, double lm, double ls, double fem, double fes, double fyb, Reduction rd) {
    double re = ratio(pad, fem, fes);
    double k1 = k1(pad, re, lm / ls);
    double k2 = k2(pad, re, fyb, d, fem, lm);
    double k3 = k3(pad, re, fyb, d, fem, ls);
    return new YieldModes(
        List.of(
            new YieldModes.Mode("Im", pad.take(MODE_I, 1, d, lm, fem, rd.modeI())),
            new YieldModes.Mode("Is", pad.take(MODE_I, 1, d, ls, fes, rd.modeI())),
            new YieldModes.Mode("II", pad.take(MODE_II, k1, d, ls, fes, rd.modeII())),
            new YieldModes.Mode("IIIm", pad.take(MODE_IIIM, k2, d, lm, fem, re, rd.modeIII())),
            new YieldModes.Mode("IIIs", pad.take(MODE_IIIS, 1, k3, d, ls, fem, re, rd.modeIII())),
            new YieldModes.Mode("IV", pad.take(MODE_IV, 1, d, rd.modeIII(), fem, fyb, re))));
  }

  /** Double shear, modes Im, Is, IIIs, IV, for the whole fastener. */
  public static YieldModes doubled(
      Pad pad, double d, double lm, double ls, double fem, double fes, double fyb, double degrees) {
    return doubled(pad, d, lm, ls, fem, fes, fyb, Reduction.of(d, degrees));
  }

  /** Double shear with given reduction terms. */
  public static YieldModes doubled(
      Pad pad, double d, double lm, double ls, double fem, double fes, double fyb, Reduction rd) {
    double re = ratio(pad, fem, fes);
    double k3 = k3(pad, re, fyb, d, fem, ls);
    return new YieldModes(
        List.of(
            new YieldModes.Mode("Im", pad.take(MODE_I, 1, d, lm, fem, rd.modeI())),
            new YieldModes.Mode("Is", pad.take(MODE_I, 2, d, ls, fes, rd.modeI())),
            new YieldModes.Mode("IIIs", pad.take(MODE_IIIS, 2, k3, d, ls, fem, re, rd.modeIII())),
            new YieldModes.Mode("IV", pad.take(MODE_IV, 2, d, rd.modeIII(), fem, fyb, re))));
  }
}
