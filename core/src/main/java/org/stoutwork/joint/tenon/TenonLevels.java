package org.stoutwork.joint.tenon;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Low, mean and high of a tenon's rotational stiffness in the plane of the frame. */
public final class TenonLevels {

  /** Why the glued range is as wide as it is. */
  public static final String GLUED_REASON =
      "low: half the cheek glued, softened glue, open shoulder, soft wood; mean: part of the cheek"
          + " unglued, shoulder tight only in places; high: sound glue, tight shoulder, stiff wood."
          + " No test stands behind it";

  /** Why the dry range is as wide as it is. */
  public static final String DRY_REASON =
      "low: the tenon rests on one edge and turns freely; mean: half the stiffness of a tight fit;"
          + " high: a tight fit in stiff wood. Friction in a clamped shoulder can stiffen it further";

  private static final Source JUDGED =
      Source.projectDefault("judgement on the solid models: share of glue and shoulder that acts");

  private static final Formula HIGH = level("high", "1.2*(K_ck + K_sh)", true, TenonSpring.RULE);
  private static final Formula MEAN = level("mean", "0.75*K_ck + 0.25*K_sh", true, JUDGED);
  private static final Formula LOW = level("low", "0.35*K_ck", false, TenonSpring.RULE);
  private static final Formula DRY_MEAN = dryLevel("mean", "0.5*K_dry", JUDGED);
  private static final Formula DRY_HIGH = dryLevel("high", "1.2*K_dry", TenonSpring.RULE);

  private TenonLevels() {}

  private static Formula level(String name, String text, boolean shoulder, Source source) {
    Formula.Builder builder =
        Formula.define("K_" + name)
            .meaning("rotational stiffness in the plane of the frame, " + name)
            .unit(Unit.N_MM_PER_RAD)
            .where("K_ck", "cheeks", Unit.N_MM_PER_RAD);
    if (shoulder) {
      builder = builder.where("K_sh", "shoulder", Unit.N_MM_PER_RAD);
    }
    return builder.as(text).source(source);
  }

  private static Formula dryLevel(String name, String text, Source source) {
    return Formula.define("K_" + name)
        .meaning("rotational stiffness in the plane of the frame, " + name)
        .unit(Unit.N_MM_PER_RAD)
        .where("K_dry", "edge bearing", Unit.N_MM_PER_RAD)
        .as(text)
        .source(source);
  }

  /** Half the cheek glued, soft, shoulder open. */
  public static double low(Pad pad, double cheeks) {
    return pad.take(LOW, cheeks);
  }

  /** Part of the cheek and part of the shoulder. */
  public static double mean(Pad pad, double cheeks, double shoulder) {
    return pad.take(MEAN, cheeks, shoulder);
  }

  /** Sound glue and a tight shoulder. */
  public static double high(Pad pad, double cheeks, double shoulder) {
    return pad.take(HIGH, cheeks, shoulder);
  }

  /** Half a tight dry fit. */
  public static double dryMean(Pad pad, double dry) {
    return pad.take(DRY_MEAN, dry);
  }

  /** A tight dry fit in stiff wood. */
  public static double dryHigh(Pad pad, double dry) {
    return pad.take(DRY_HIGH, dry);
  }
}
