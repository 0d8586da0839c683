package org.stoutwork.joint;

/**
 * A housing (dado): the whole end of a shelf or rail let into a shallow trench.
 *
 * @param depth of the trench, mm
 * @param glued whether it is glued
 */
public record Housing(double depth, boolean glued) implements Joint {

  /** Checks the trench. */
  public Housing {
    JointFault.requirePositive("depth of the housing", depth);
  }

  @Override
  public String title() {
    return (glued ? "glued " : "dry ") + "housing";
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "depth of the housing", depth, members.postDepth() / 2, "half of the piece it is cut into");
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.housing(this);
  }
}
