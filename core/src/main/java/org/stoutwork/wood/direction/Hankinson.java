package org.stoutwork.wood.direction;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Strength or stiffness at an angle to the grain. */
public final class Hankinson {

  /** The exponent for compression and bearing. */
  public static final double COMPRESSION = 2;

  private static final Formula AT_ANGLE =
      Formula.define("N")
          .meaning("value at an angle to the grain")
          .unit(Unit.MPA)
          .where("P", "value along the grain", Unit.MPA)
          .where("Q", "value across the grain", Unit.MPA)
          .where("α", "angle to the grain", Unit.RAD)
          .where("n", "exponent", Unit.ONE)
          .as("P*Q/(P*sin(α)^n + Q*cos(α)^n)")
          .source(
              Source.published(
                  "Wood Handbook FPL-GTR-190 (2010)", "chapter 5, Hankinson-type formula"));

  private Hankinson() {}

  /**
   * The value at an angle.
   *
   * @param along value along the grain, MPa, above 0
   * @param across value across the grain, MPa, above 0
   * @param angle to the grain, rad, from 0 to π/2
   * @param exponent from 1.5 to 2.5: 2 for compression and modulus; 1.5 to 2 for bending and
   *     tension
   * @param pad to write on
   * @throws IllegalArgumentException if a number is outside its range
   */
  public static double at(double along, double across, double angle, double exponent, Pad pad) {
    if (!(along > 0 && across > 0)) {
      throw new IllegalArgumentException(
          "both values must be above 0 MPa; they were %s and %s".formatted(along, across));
    }
    if (!(angle >= 0 && angle <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "the angle to the grain lies from 0 to 90°; it was %s rad".formatted(angle));
    }
    if (!(exponent >= 1.5 && exponent <= 2.5)) {
      throw new IllegalArgumentException(
          "the exponent lies from 1.5 to 2.5; it was %s".formatted(exponent));
    }
    return pad.take(AT_ANGLE, along, across, angle, exponent);
  }
}
