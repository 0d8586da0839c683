package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places along one piece at which it has a node. Nodes are named by whole millimetres, and a length
 * of less than one says nothing of the piece, so that places nearer than 1 mm are one.
 */
final class Places {

  /** Least distance of two places, mm. */
  private static final double APART = 1;

  private Places() {}

  /**
   * The places that must be met as they are, and those of the others that are not within 1 mm of
   * one that was taken before; rising, mm.
   */
  static List<Double> merged(List<Double> must, List<Double> others) {
    List<Double> out = new ArrayList<>(must);
    for (double other : others) {
      if (out.stream().allMatch(taken -> Math.abs(taken - other) >= APART)) {
        out.add(other);
      }
    }
    out.sort(Comparator.naturalOrder());
    return out;
  }

  /** The same, of those alone that lie more than 1 mm within two ends. */
  static List<Double> inside(double from, double to, List<Double> must, List<Double> others) {
    return merged(must, others).stream().filter(y -> y > from + APART && y < to - APART).toList();
  }

  /** The place that is nearest to another; there is one at least. */
  static double nearest(List<Double> places, double to) {
    return places.stream()
        .min(Comparator.comparingDouble(place -> Math.abs(place - to)))
        .orElseThrow();
  }
}
