package org.stoutwork.joint.bolted;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** One or two bolts and the pressed shoulder as a couple. */
public final class BedBolt {

  /** Modulus of bolt steel, MPa. */
  public static final double STEEL = 210000;

  private static final Source COUPLE =
      Source.derived("statics: bolts on their levers against a sprung shoulder");

  private static final Formula BOLT =
      Formula.define("k_bolt")
          .meaning("stiffness of one bolt in tension")
          .unit(Unit.N_PER_MM)
          .where("E_s", "modulus of steel", Unit.MPA)
          .where("A_s", "stress area of the bolt", Unit.MM2)
          .where("L_b", "length between washer and nut", Unit.MM)
          .as("E_s*A_s/L_b")
          .source(Source.derived("statics"));

  private static final Formula ONE =
      Formula.define("K_φ")
          .meaning("rotational stiffness with one bolt")
          .unit(Unit.N_MM_PER_RAD)
          .where("z", "lever of the bolt to the shoulder pressure", Unit.MM)
          .where("k_bolt", "stiffness of the bolt", Unit.N_PER_MM)
          .where("k_C", "stiffness of the post under the shoulder", Unit.N_PER_MM)
          .as("z^2/(1/k_bolt + 1/k_C)")
          .source(COUPLE);

  private static final Formula TWO =
      Formula.define("K_φ")
          .meaning("rotational stiffness with two bolts")
          .unit(Unit.N_MM_PER_RAD)
          .where("k_bolt", "stiffness of one bolt", Unit.N_PER_MM)
          .where("z_1", "lever of the far bolt", Unit.MM)
          .where("z_2", "lever of the near bolt", Unit.MM)
          .where("k_C", "stiffness of the post under the shoulder", Unit.N_PER_MM)
          .as("k_bolt*(z_1^2 + z_2^2 - k_bolt*(z_1 + z_2)^2/(k_C + 2*k_bolt))")
          .source(COUPLE);

  private static final Formula LEVER =
      Formula.define("z")
          .meaning("lever of a bolt to the middle of the shoulder pressure")
          .unit(Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .where("e", "distance of the bolt from mid-depth, away from the pressure", Unit.MM)
          .where("a", "pressed depth", Unit.MM)
          .as("d_r/2 + e - a/3")
          .source(Source.derived("statics"));

  private static final Formula OPENING =
      Formula.define("M_open")
          .meaning("moment at which the shoulder begins to open")
          .unit(Unit.N_MM)
          .where("F_0", "preload that is kept", Unit.N)
          .where("z", "lever", Unit.MM)
          .as("F_0*z")
          .source(Source.derived("statics"));

  private static final Formula MOMENT =
      Formula.define("M_R")
          .meaning("moment carried by bolt and shoulder")
          .unit(Unit.N_MM)
          .where("F_R", "force of the bolt or its weakest part", Unit.N)
          .where("z", "lever", Unit.MM)
          .as("F_R*z")
          .source(Source.derived("statics"));

  private BedBolt() {}

  /** Stiffness of one bolt, N/mm. */
  public static double bolt(Pad pad, double stressArea, double grip) {
    return pad.take(BOLT, STEEL, stressArea, grip);
  }

  /** Lever of a bolt, mm. */
  public static double lever(Pad pad, double railDepth, double offset, double pressedDepth) {
    return pad.take(LEVER, railDepth, offset, pressedDepth);
  }

  /** Rotational stiffness with one bolt, N·mm/rad. */
  public static double rotation(Pad pad, double z, double kBolt, double kShoulder) {
    return pad.take(ONE, z, kBolt, kShoulder);
  }

  /** Rotational stiffness with two bolts, N·mm/rad. */
  public static double rotation(Pad pad, double z1, double z2, double kBolt, double kShoulder) {
    return pad.take(TWO, kBolt, z1, z2, kShoulder);
  }

  /** Moment at which the shoulder opens, N·mm. */
  public static double opening(Pad pad, double preload, double z) {
    return pad.take(OPENING, preload, z);
  }

  /** Moment carried, N·mm. */
  public static double moment(Pad pad, double force, double z) {
    return pad.take(MOMENT, force, z);
  }
}
