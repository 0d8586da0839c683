package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.model.Direction;

/**
 * One spring of a member's end, to be varied.
 *
 * @param member name of the member
 * @param end which of its ends
 * @param direction along or about which of the member's local axes
 */
public record JointSpring(String member, End end, Direction direction) {
  /** The two ends of a member. */
  public enum End {
    /** Where its local x begins. */
    START,
    /** Where its local x ends. */
    END
  }

  boolean atEnd() {
    return end == End.END;
  }

  @Override
  public String toString() {
    return direction.inWords() + " at the " + (atEnd() ? "end" : "start") + " of '" + member + "'";
  }
}
