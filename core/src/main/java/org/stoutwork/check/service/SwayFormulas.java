package org.stoutwork.check.service;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/** Sway of a frame and of the weight on it. Sizes in mm, forces in N, all above 0. */
public final class SwayFormulas {

  /** Racking stiffness from a sway, N/mm. */
  public static final Formula STIFFNESS =
      Formula.define("k")
          .meaning("racking stiffness")
          .unit(Unit.N_PER_MM)
          .where("H", "thrust", Unit.N)
          .where("δ_1", "sway of the analysis where the thrust acts", Unit.MM)
          .as("H/δ_1")
          .source(Source.derived("definition of stiffness"));

  /**
   * Sway with the weight that leans along, mm. Only for a stiffness above W/h: a softer frame
   * folds.
   */
  public static final Formula AMPLIFIED =
      Formula.define("δ")
          .meaning("sway with the weight that leans along")
          .unit(Unit.MM)
          .where("H", "thrust", Unit.N)
          .where("k", "racking stiffness", Unit.N_PER_MM)
          .where("W", "weight carried by the frame", Unit.N)
          .where("h", "height", Unit.MM)
          .as("H/(k - W/h)")
          .source(Source.derived("sway of a frame whose weight leans with it"));

  private SwayFormulas() {}
}
