package org.stoutwork.check.service;

import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Writes the grillage's figure beside that of the plate, and why they differ. */
final class BothModels {

  /** Where a figure of the plate comes from. */
  static final Source PLATE =
      Source.derived("analysis of the top as a plate on the frame, joints at mean stiffness");

  /** Where a figure of the grillage comes from. */
  static final Source STRIPS =
      Source.derived("analysis of the frame, the top as strips, joints at mean stiffness");

  private static final Formula DIFFERENCE =
      Formula.define("Δ")
          .meaning("what the plate gives more than the grillage, as a part of it")
          .unit(Unit.ONE)
          .where("w", "by the plate", Unit.MM)
          .where("w_{grid}", "by the grillage", Unit.MM)
          .as("(w - w_{grid})/w_{grid}")
          .source(Source.derived("definition"));

  private static final String POINT =
      "The plate takes the smaller of the wood's moduli across the grain and yields in shear round"
          + " the patch and the bearings; the grillage takes their mean and shares a load between"
          + " strips at their crossings only.";

  private static final String EVEN =
      "The plate carries an even load out to its edges, and what overhangs lifts the middle; the"
          + " grillage lays all of it between its outermost lines and, where a layer bends across"
          + " its grain, takes the mean of two moduli of which the plate takes the smaller.";

  private BothModels() {}

  /**
   * Writes the comparison.
   *
   * @param narrow whether most of the load stands on small places
   * @param plate figure of the plate, mm
   * @param strips figure of the grillage, mm
   * @param mesh difference of two meshes of the plate, relative
   */
  static void compare(boolean narrow, double plate, double strips, double mesh, Pad pad) {
    pad.remark(
        "By a grillage of strips, for comparison. The plate is extrapolated from two meshes that"
            + " differ by "
            + Writing.number(100 * mesh, 2)
            + " %.");
    pad.given("w_{grid}", "the same by the grillage", strips, Unit.MM, STRIPS);
    if (strips > 0) {
      pad.take(DIFFERENCE, plate, strips);
    }
    pad.remark(narrow ? POINT : EVEN);
  }
}
