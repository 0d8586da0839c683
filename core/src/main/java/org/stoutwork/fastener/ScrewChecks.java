package org.stoutwork.fastener;

import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/** What every screw must satisfy, and how it is called. */
final class ScrewChecks {

  private ScrewChecks() {}

  static void check(String kind, double diameter, double root, double length, double threaded) {
    if (!(root > 0 && diameter >= root)) {
      throw new IllegalArgumentException(
          "a %s of %s mm needs a core between 0 mm and that; it was %s mm"
              .formatted(kind, diameter, root));
    }
    if (!(threaded > 0 && threaded <= length)) {
      throw new IllegalArgumentException(
          "a %s %s mm long needs a thread between 0 mm and that; it was %s mm"
              .formatted(kind, length, threaded));
    }
  }

  static String title(String kind, double diameter, double length) {
    return Writing.number(diameter, 3) + " × " + Writing.with(length, Unit.MM, 3) + " " + kind;
  }
}
