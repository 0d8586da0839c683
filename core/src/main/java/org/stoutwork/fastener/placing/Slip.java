package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Slip moduli of dowel-type fasteners, per fastener and shear plane. */
public final class Slip {

  private static final Source TABLE = Documents.ec5("7.1, Table 7.1");

  private static final Formula PAIR =
      Formula.define("ρ_m")
          .meaning("density for the slip of two different woods")
          .unit(Unit.KG_PER_M3)
          .where("ρ_m1", "mean density of one piece", Unit.KG_PER_M3)
          .where("ρ_m2", "mean density of the other", Unit.KG_PER_M3)
          .as("sqrt(ρ_m1*ρ_m2)")
          .source(Documents.ec5("7.1(2)"));

  private static final Formula DOWEL =
      Formula.define("K_ser")
          .meaning("slip modulus of a dowel, screw, fitted bolt or nail in a drilled hole")
          .unit(Unit.N_PER_MM)
          .where("ρ_m", "mean density", Unit.KG_PER_M3)
          .where("d", "diameter", Unit.MM)
          .fitted("ρ_m^1.5*d/23")
          .source(TABLE);

  private static final Formula NAIL =
      Formula.define("K_ser")
          .meaning("slip modulus of a nail driven without drilling")
          .unit(Unit.N_PER_MM)
          .where("ρ_m", "mean density", Unit.KG_PER_M3)
          .where("d", "diameter", Unit.MM)
          .fitted("ρ_m^1.5*d^0.8/30")
          .source(TABLE);

  private static final Formula ULTIMATE =
      Formula.define("K_u")
          .meaning("slip modulus near failure")
          .unit(Unit.N_PER_MM)
          .where("K_ser", "slip modulus in use", Unit.N_PER_MM)
          .as("2*K_ser/3")
          .source(Documents.ec5("2.2.2(2)"));

  private static final Formula LASTING =
      Formula.define("K_{ser,fin}")
          .meaning("slip modulus under lasting load")
          .unit(Unit.N_PER_MM)
          .where("K_ser", "slip modulus in use", Unit.N_PER_MM)
          .where("k_def", "creep factor of the joint: twice that of the timber", Unit.ONE)
          .as("K_ser/(1 + k_def)")
          .source(Documents.ec5("2.2.3, 2.3.2.2"));

  private static final Formula PULLED =
      Formula.define("K_ax")
          .meaning("stiffness of one screw against being drawn out of side grain")
          .unit(Unit.N_PER_MM)
          .where("d", "thread diameter", Unit.MM)
          .where("l_ef", "thread in the wood", Unit.MM)
          .fitted("25*d*l_ef")
          .source(Source.fromMemory("European technical assessments of wood screws", "usual form"));

  private static final Formula ROTATION =
      Formula.define("K_φ")
          .meaning("rotational stiffness of a group of fasteners")
          .unit(Unit.N_MM_PER_RAD)
          .where("n_p", "shear planes", Unit.ONE)
          .where("K", "slip modulus of one fastener", Unit.N_PER_MM)
          .where("S_r", "sum of the squared distances from the middle", Unit.MM2)
          .as("n_p*K*S_r")
          .source(Source.derived("statics"));

  private Slip() {}

  /** Density to use for two pieces of different wood, kg/m³. */
  public static double density(Pad pad, double one, double other) {
    return pad.take(PAIR, one, other);
  }

  /** K_ser of a dowel, peg, screw, fitted bolt or nail in a drilled hole, N/mm. */
  public static double dowel(Pad pad, double meanDensity, double d) {
    return pad.take(DOWEL, meanDensity, d);
  }

  /** K_ser of a nail driven without drilling, N/mm. */
  public static double nail(Pad pad, double meanDensity, double d) {
    return pad.take(NAIL, meanDensity, d);
  }

  /** Slip modulus near failure, N/mm. */
  public static double ultimate(Pad pad, double kSer) {
    return pad.take(ULTIMATE, kSer);
  }

  /** Slip modulus under lasting load, N/mm. */
  public static double lasting(Pad pad, double kSer, double kDef) {
    return pad.take(LASTING, kSer, kDef);
  }

  /** Stiffness of one screw against being drawn out of side grain, N/mm. */
  public static double pulled(Pad pad, double d, double thread) {
    return pad.take(PULLED, d, thread);
  }

  /** Sum of squared distances of four fasteners at the corners of a × b from their middle, mm². */
  public static double cornersOf(double a, double b) {
    return a * a + b * b;
  }

  /** Rotational stiffness of a group, N·mm/rad. */
  public static double rotation(Pad pad, int planes, double k, double sumOfSquares) {
    return pad.take(ROTATION, planes, k, sumOfSquares);
  }
}
