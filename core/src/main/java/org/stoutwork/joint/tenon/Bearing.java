package org.stoutwork.joint.tenon;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Wood pressed on wood: at an angle to the grain, under a tenon's edge, under a shoulder. */
public final class Bearing {

  private static final Formula HANKINSON =
      Formula.define("f_{c,θ}")
          .meaning("bearing strength at an angle to the grain")
          .unit(Unit.MPA)
          .where("f_c0", "along the grain", Unit.MPA)
          .where("f_c90", "across the grain", Unit.MPA)
          .where("θ", "angle to the grain", Unit.RAD)
          .as("f_c0*f_c90/(f_c0*sin(θ)^2 + f_c90*cos(θ)^2)")
          .source(
              Source.published(
                  "Wood Handbook (FPL-GTR-190)", "Hankinson's formula; EN 1995-1-1 6.2.2"));

  private static final Formula EVEN =
      Formula.define("σ_V")
          .meaning("pressure of the tenon's edge on the end of the mortise")
          .unit(Unit.MPA)
          .where("V", "force", Unit.N)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("V/(t*l)")
          .source(Source.derived("statics"));

  private static final Formula FORCE =
      Formula.define("V_R")
          .meaning("force that the tenon's edge bears")
          .unit(Unit.N)
          .where("f_c", "bearing strength", Unit.MPA)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("f_c*t*l")
          .source(Source.derived("statics"));

  private static final Formula TURNING =
      Formula.define("σ_M")
          .meaning("greatest pressure of the edges from a moment")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("6*M/(t*l^2)")
          .source(Source.derived("statics: pressure linear along the tenon"));

  private static final Formula TURNING_CAPACITY =
      Formula.define("M_el")
          .meaning("moment at which the edges begin to crush")
          .unit(Unit.N_MM)
          .where("f_c", "bearing strength", Unit.MPA)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("f_c*t*l^2/6")
          .source(Source.derived("statics"));

  private static final Formula TURNING_PLASTIC =
      Formula.define("M_pl")
          .meaning("moment with both halves of the edges crushed")
          .unit(Unit.N_MM)
          .where("f_c", "bearing strength", Unit.MPA)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("f_c*t*l^2/4")
          .source(Source.derived("statics"));

  private static final Formula SUM =
      Formula.define("σ")
          .meaning("greatest pressure on the edge")
          .unit(Unit.MPA)
          .where("σ_V", "from force", Unit.MPA)
          .where("σ_M", "from moment", Unit.MPA)
          .as("σ_V + σ_M")
          .source(Source.derived("statics"));

  private static final Formula SHOULDER =
      Formula.define("σ_c")
          .meaning("mean pressure on the pressed part of the shoulder")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("z", "lever", Unit.MM)
          .where("r_h", "how much less the fibres help the push", Unit.ONE)
          .where("N_c", "push along the rail", Unit.N)
          .where("A_c", "pressed area", Unit.MM2)
          .where("A_s", "whole shoulder", Unit.MM2)
          .as("M/(z*A_c) + r_h*N_c/A_s")
          .source(Source.derived("statics"));

  private static final Formula SPREAD =
      Formula.define("l_ef")
          .meaning("bearing length with what the fibres beside it help")
          .unit(Unit.MM)
          .where("l", "bearing length", Unit.MM)
          .where("e_1", "help on one side", Unit.MM)
          .where("e_2", "help on the other side", Unit.MM)
          .as("l + e_1 + e_2")
          .source(Documents.ec5("6.1.5, A1"));

  private static final Formula ON_LENGTH =
      Formula.define("σ_{c,90}")
          .meaning("pressure across the grain")
          .unit(Unit.MPA)
          .where("F", "force", Unit.N)
          .where("b", "width", Unit.MM)
          .where("l_ef", "bearing length", Unit.MM)
          .as("F/(b*l_ef)")
          .source(Documents.ec5("6.1.5 (6.3)"));

  private Bearing() {}

  /** Strength at an angle in degrees to the grain, MPa. */
  public static double atAngle(Pad pad, double along, double across, double degrees) {
    return pad.take(HANKINSON, along, across, Math.toRadians(degrees));
  }

  /** Force that the edge bears, N. */
  public static double force(Pad pad, double fc, double t, double l) {
    return pad.take(FORCE, fc, t, l);
  }

  /** Pressure of the edge from a force, MPa. */
  public static double fromForce(Pad pad, double v, double t, double l) {
    return pad.take(EVEN, v, t, l);
  }

  /** Greatest pressure of the edges from a moment, MPa. */
  public static double fromMoment(Pad pad, double m, double t, double l) {
    return pad.take(TURNING, m, t, l);
  }

  /** Greatest pressure from both, MPa. */
  public static double both(Pad pad, double fromForce, double fromMoment) {
    return pad.take(SUM, fromForce, fromMoment);
  }

  /** Moment at which the edges begin to crush, N·mm. */
  public static double elasticMoment(Pad pad, double fc, double t, double l) {
    return pad.take(TURNING_CAPACITY, fc, t, l);
  }

  /** Moment with both halves crushed, N·mm. */
  public static double plasticMoment(Pad pad, double fc, double t, double l) {
    return pad.take(TURNING_PLASTIC, fc, t, l);
  }

  /**
   * Mean pressure on the shoulder, MPa, to be held against the strength under the pressed part.
   *
   * @param evenly by what the push, which presses the whole shoulder, counts more; 1 or more
   */
  public static double shoulder(
      Pad pad,
      double moment,
      double lever,
      double evenly,
      double push,
      double pressedArea,
      double wholeArea) {
    return pad.take(SHOULDER, moment, lever, evenly, push, pressedArea, wholeArea);
  }

  /**
   * Bearing length across the grain with the help of the fibres beside it, mm.
   *
   * @param before wood before the bearing, mm
   * @param after wood after the bearing, mm
   * @param toNext clear distance to the next bearing, mm
   */
  public static double spread(Pad pad, double l, double before, double after, double toNext) {
    double most = Math.min(Math.min(30, l), toNext / 2);
    return pad.take(SPREAD, l, Math.min(before, most), Math.min(after, most));
  }

  /** Pressure across the grain, MPa. */
  public static double across(Pad pad, double force, double b, double length) {
    return pad.take(ON_LENGTH, force, b, length);
  }
}
