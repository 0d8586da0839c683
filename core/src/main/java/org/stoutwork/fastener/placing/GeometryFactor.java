package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** What a stout fastener loses by sitting near an end or near its neighbours, NDS. */
public final class GeometryFactor {

  private static final Formula FACTOR =
      Formula.define("C_Δ")
          .meaning("geometry factor: distances over those of full strength")
          .where("a_3", "distance from the end", Unit.MM)
          .where("a_{3,full}", "distance of full strength", Unit.MM)
          .where("a_1", "spacing along the force", Unit.MM)
          .where("a_{1,full}", "spacing of full strength", Unit.MM)
          .as("min(1, a_3/a_{3,full}, a_1/a_{1,full})")
          .source(Documents.nds("12.5.1, Tables 12.5.1A and B"));

  private GeometryFactor() {}

  /**
   * The factor; 1 below 1/4 in, where the NDS has none.
   *
   * @param d diameter, mm
   * @param degrees between force and grain; above 45° the force counts as across the grain
   * @param hardwood whether the piece is a hardwood
   * @param end distance from the end, mm; unlimited where there is none
   * @param spacing along the force, mm; unlimited for a single fastener
   */
  public static double of(
      Pad pad, double d, double degrees, boolean hardwood, double end, double spacing) {
    if (d < Distances.QUARTER_INCH) {
      return 1;
    }
    double fullEnd = (degrees > 45 ? 4 : hardwood ? 5 : 7) * d;
    double fullSpacing = 4 * d;
    if (end >= fullEnd && spacing >= fullSpacing) {
      return 1;
    }
    return pad.take(
        FACTOR, Math.min(end, fullEnd), fullEnd, Math.min(spacing, fullSpacing), fullSpacing);
  }
}
