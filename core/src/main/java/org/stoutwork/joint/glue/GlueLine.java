package org.stoutwork.joint.glue;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Strength of a glue line on the grains it joins; end grain counts nought. */
public final class GlueLine {

  private static final Source CROSSED =
      Source.published(
          "FPL Report 1522 (McLeod and others, 1945)",
          "shear strength across the grain taken as one third of that along it");

  private static final Formula CROSS =
      Formula.define("f_g")
          .meaning("shear strength of a glue line where one of the two grains runs across the slip")
          .unit(Unit.MPA)
          .where("S", "shear strength of the wood along the grain", Unit.MPA)
          .as("S/3")
          .source(CROSSED);

  private static final Formula ANGLED =
      Formula.define("f_g")
          .meaning("shear strength of a glue line at an angle to the grain of one face")
          .unit(Unit.MPA)
          .where("S", "shear strength of the wood along the grain", Unit.MPA)
          .where("θ", "angle between slip and grain", Unit.RAD)
          .as("S/(1 + 2*sin(θ)^2)")
          .source(Source.derived("Hankinson's form with the ratio one third"));

  private GlueLine() {}

  /** One third of S: tenons, laps, bridles. */
  public static double crossed(Pad pad, double shear) {
    return pad.take(CROSS, shear);
  }

  /** At an angle in degrees between slip and the grain of one face: S at 0°, S/3 at 90°. */
  public static double angled(Pad pad, double shear, double degrees) {
    return pad.take(ANGLED, shear, Math.toRadians(degrees));
  }
}
