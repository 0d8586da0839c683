package org.stoutwork.analysis.model;

/** How one end of a member is held by its node in one local direction. */
public sealed interface EndCondition {
  /** Moves with the node. */
  record Rigid() implements EndCondition {}

  /** Takes no force or moment in this direction. */
  record Free() implements EndCondition {}

  /**
   * A spring of zero length.
   *
   * @param stiffness N/mm along, N mm/rad about an axis; positive
   */
  record Elastic(double stiffness) implements EndCondition {
    /** Checks the range. */
    public Elastic {
      Check.positive("end stiffness", stiffness, "N/mm or N mm/rad (0 is a free end)");
    }
  }

  /** The rigid condition. */
  EndCondition RIGID = new Rigid();

  /** The free condition. */
  EndCondition FREE = new Free();

  /** A spring, or the free condition for stiffness 0. */
  static EndCondition elastic(double stiffness) {
    return stiffness == 0 ? FREE : new Elastic(stiffness);
  }
}
