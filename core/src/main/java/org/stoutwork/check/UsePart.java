package org.stoutwork.check;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;
import org.stoutwork.working.Working;

/** The part of a strength that a duty allows to be used, as lines of a working. */
public final class UsePart {

  private static final Source LIMIT = Source.projectDefault("limits of use by duty");

  private static final Formula OF_ALL =
      Formula.define("u")
          .meaning("utilisation of what the duty allows")
          .where("u_1", "utilisation of the whole capacity, from the line before", Unit.ONE)
          .where("η", "part of the strength that may be used", Unit.ONE)
          .as("u_1/η")
          .source(LIMIT);

  private UsePart() {}

  /**
   * A strength less what may not be used; no line where all of it may.
   *
   * @param strength in the unit
   * @param part above 0, at most 1
   * @param unit of the strength
   * @param pad that records the line
   */
  public static double of(double strength, double part, Unit unit, Pad pad) {
    if (part == 1) {
      return strength;
    }
    Formula formula =
        Formula.define("R_d")
            .meaning("capacity that may be used")
            .unit(unit)
            .where("η", "part of the strength that may be used", Unit.ONE)
            .where("R", "strength", unit)
            .as("η*R")
            .source(LIMIT);
    return pad.take(formula, part, strength);
  }

  /** A working that ends in a utilisation, and the line that puts the allowed part below it. */
  public static Working after(Working working, double utilisation, double part) {
    if (part == 1) {
      return working;
    }
    RecordingPad pad = Pad.recording();
    pad.include(working);
    pad.take(OF_ALL, utilisation, part);
    return pad.working();
  }
}
