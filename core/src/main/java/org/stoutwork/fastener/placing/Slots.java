package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Holes and slots that let wood move with the seasons. */
public final class Slots {

  private static final Formula MOVEMENT =
      Formula.define("Δ")
          .meaning("movement across the grain")
          .unit(Unit.MM)
          .where("w", "width that moves", Unit.MM)
          .where("c_s", "movement per percentage point of moisture", Unit.ONE)
          .where("ΔMC", "change of moisture content", Unit.POINT)
          .as("w*c_s*ΔMC")
          .source(Documents.woodHandbook("ch. 13, dimensional change coefficients"));

  private static final Formula SLOT =
      Formula.define("l_slot")
          .meaning("length of slot for a screw")
          .unit(Unit.MM)
          .where("d", "screw diameter", Unit.MM)
          .where("Δ", "movement", Unit.MM)
          .where("tol", "tolerance on either side", Unit.MM)
          .as("d + Δ + 2*tol")
          .source(Source.derived("geometry: movement to both sides of the middle"));

  private Slots() {}

  /** Movement of a width over a change in percentage points of moisture, mm. */
  public static double movement(Pad pad, double width, double coefficient, double points) {
    return pad.take(MOVEMENT, width, coefficient, points);
  }

  /** Length of slot, mm. */
  public static double length(Pad pad, double diameter, double movement, double tolerance) {
    return pad.take(SLOT, diameter, movement, tolerance);
  }
}
