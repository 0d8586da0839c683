package org.stoutwork.check.movement;

import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.wood.SheetGood;

/** Why the movement of a top with the seasons is not calculated. */
final class UnknownMovement {

  private UnknownMovement() {}

  static String reason(Bench bench) {
    TopLayer first = bench.top().layers().get(0);
    if (bench.top().layers().size() > 1) {
      return "the movement of a top in layers is not calculated: its layers hold each other back";
    }
    if (bench.timbers().get(first.wood()).wood() instanceof SheetGood) {
      return "the movement of a top of sheets is not calculated; it is small";
    }
    if (first.grain() == Grain.ACROSS) {
      return "the movement of a top with its grain across the bench is not calculated: it grows"
          + " along the bench";
    }
    return "the shrinkage of this top is not known: its wood is named by a strength class only."
        + " Name the species to have it checked";
  }
}
