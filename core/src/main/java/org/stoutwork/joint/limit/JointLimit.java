package org.stoutwork.joint.limit;

import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Working;

/**
 * One way for a joint to fail, with demand and capacity; or one rule of making, with the least
 * allowed value as the demand and the value as the capacity.
 *
 * @param failure in trade words, such as {@code tenon shear at the shoulder}
 * @param place the part it happens in: tenon, post, peg, bolt, wedge, glue line
 * @param demand what the part must carry, in the unit
 * @param capacity what the part carries, in the unit
 * @param unit of both
 * @param nature strength, service or rule
 * @param least whether the demand is the least that is asked for, and the capacity what is there
 * @param of what bare numbers are shares or multiples of, such as {@code of the strength}; empty
 *     where there is a unit
 * @param working lines of the calculation; none if they were not asked for
 */
public record JointLimit(
    String failure,
    String place,
    double demand,
    double capacity,
    Unit unit,
    Nature nature,
    boolean least,
    String of,
    Working working) {

  /** What a limit is a limit of. */
  public enum Nature {
    /** A strength that a force may use up. */
    STRENGTH,
    /** Nothing fails beyond it, but the joint then opens and softens. */
    SERVICE,
    /** A distance, slope or strain that a rule or standard asks for. */
    RULE
  }

  /** Checks that demand and capacity are numbers and not below nought. */
  public JointLimit {
    if (!(demand >= 0 && capacity >= 0)) {
      throw new IllegalArgumentException(
          "%s in the %s: demand %s and capacity %s must be 0 or more"
              .formatted(failure, place, demand, capacity));
    }
  }

  /** Demand over capacity; 0 without demand, unlimited for a demand that nothing carries. */
  public double utilisation() {
    if (demand == 0) {
      return 0;
    }
    return demand / capacity;
  }
}
