package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Small changes to a list of bands. */
final class Bands {

  private Bands() {}

  /** With space above the first. */
  static List<Band> spaced(List<Band> bands, double space) {
    return changed(bands, 0, b -> b.spaced(space));
  }

  /** With the first changed. */
  static List<Band> first(List<Band> bands, UnaryOperator<Band> change) {
    return changed(bands, 0, change);
  }

  /** With the last changed. */
  static List<Band> last(List<Band> bands, UnaryOperator<Band> change) {
    return changed(bands, bands.size() - 1, change);
  }

  /** With every band but the last holding on to its next. */
  static List<Band> together(List<Band> bands, Bond bond) {
    List<Band> out = new ArrayList<>(bands);
    for (int i = 0; i < out.size() - 1; i++) {
      out.set(i, out.get(i).bonded(bond));
    }
    return out;
  }

  /** So that neither the first nor the last line of a paragraph stands alone. */
  static List<Band> withoutOrphans(List<Band> lines) {
    List<Band> out = new ArrayList<>(lines);
    int n = out.size();
    if (n > 1) {
      out.set(0, out.get(0).bonded(Bond.FIRM));
      out.set(n - 2, out.get(n - 2).bonded(Bond.FIRM));
    }
    return out;
  }

  private static List<Band> changed(List<Band> bands, int at, UnaryOperator<Band> change) {
    if (bands.isEmpty()) {
      return bands;
    }
    List<Band> out = new ArrayList<>(bands);
    out.set(at, change.apply(out.get(at)));
    return out;
  }
}
