package org.stoutwork.check;

import java.util.List;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.assembly.FloorContact;

/**
 * The analysis behind a check, joints at their mean stiffness: what acted, how the feet stood, and
 * what was read from it.
 *
 * @param loads that act together
 * @param floor how the feet stand; feet that may lift are held where the bench would tip altogether
 * @param quantity that was read, in words; empty where a check reads the forces of a whole part
 * @param value that was read, mm
 * @param terms whose sum is the value
 */
public record GoverningCase(
    Combination loads, FloorContact floor, String quantity, double value, List<Term> terms) {

  /**
   * One movement and its part in the value.
   *
   * @param node that moves
   * @param direction in which it moves
   * @param factor by which its movement counts
   */
  public record Term(String node, Direction direction, double factor) {}

  /** Keeps its own copy. */
  public GoverningCase {
    terms = List.copyOf(terms);
  }

  /** A case of which a check reads movements, the feet held so that effects add up. */
  public static GoverningCase movement(
      Combination loads, String quantity, double value, List<Term> terms) {
    return new GoverningCase(loads, FloorContact.HELD, quantity, value, terms);
  }

  /** A case of which a check reads forces. */
  static GoverningCase forces(Combination loads) {
    return new GoverningCase(loads, FloorContact.MAY_LIFT, "", 0, List.of());
  }
}
