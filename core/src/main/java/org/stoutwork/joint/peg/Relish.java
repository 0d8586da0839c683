package org.stoutwork.joint.peg;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The wood of a tenon beyond its peg or wedge, and the couple of peg and shoulder. */
public final class Relish {

  private static final Formula TEAR_OUT =
      Formula.define("Z_RT")
          .meaning("force that shears the relish out, stress falling to the end")
          .unit(Unit.N)
          .where("n", "pegs in the row", Unit.ONE)
          .where("f_v", "shear strength", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("s_crit", "smaller of peg spacing and relish", Unit.MM)
          .as("n*f_v*t*s_crit")
          .source(Documents.nds("Appendix E.3"));

  private static final Formula EVEN =
      Formula.define("F_v")
          .meaning("force that shears the relish out, stress spread evenly: an upper bound")
          .unit(Unit.N)
          .where("n", "pegs in the row", Unit.ONE)
          .where("f_v", "shear strength", Unit.MPA)
          .where("t", "tenon thickness", Unit.MM)
          .where("s_crit", "smaller of peg spacing and relish", Unit.MM)
          .as("2*n*f_v*t*s_crit")
          .source(Source.derived("statics"));

  private static final Formula COUPLE =
      Formula.define("M")
          .meaning("moment of a pull in the pegs against the shoulder")
          .unit(Unit.N_MM)
          .where("F", "force of the pegs", Unit.N)
          .where("z", "lever", Unit.MM)
          .as("F*z")
          .source(Source.derived("statics"));

  private Relish() {}

  /** Force that tears the relish out, N. */
  public static double tearOut(Pad pad, int n, double fv, double t, double critical) {
    return pad.take(TEAR_OUT, n, fv, t, critical);
  }

  /** Upper bound of the same, N. */
  public static double evenly(Pad pad, int n, double fv, double t, double critical) {
    return pad.take(EVEN, n, fv, t, critical);
  }

  /** Moment of the pegs against the shoulder, N·mm. */
  public static double couple(Pad pad, double force, double lever) {
    return pad.take(COUPLE, force, lever);
  }
}
