package org.stoutwork.report.drawing.draughting;

/** Turns directions so that lettering along them reads from below or from the right. */
final class Reading {

  private Reading() {}

  /** The direction or its opposite, within −90 (not reached) to 90 degrees. */
  static double upright(double degrees) {
    double turned = degrees % 360;
    if (turned > 180) {
      turned -= 360;
    } else if (turned <= -180) {
      turned += 360;
    }
    if (turned > 90 + 1e-9) {
      return turned - 180;
    }
    return turned <= -90 + 1e-9 ? turned + 180 : turned;
  }
}
