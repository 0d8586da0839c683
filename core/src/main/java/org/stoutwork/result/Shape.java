package org.stoutwork.result;

import java.util.List;

/**
 * The deflected shape of the bench under one combination, joints at their mean stiffness.
 *
 * @param title what it shows
 * @param check key of the check that it belongs to
 * @param load in words
 * @param curves of all members
 * @param largest movement, mm
 * @param largestAt where it is, in words
 */
public record Shape(
    String title, String check, String load, List<Curve> curves, double largest, String largestAt) {

  /** Keeps its own copy. */
  public Shape {
    curves = List.copyOf(curves);
  }
}
