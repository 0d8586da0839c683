package org.stoutwork.joint;

import java.util.Optional;

/**
 * A housing (dado): the whole end of a shelf or rail let into a shallow trench.
 *
 * @param depth of the trench, mm
 * @param glued whether it is glued
 * @param screws through the post into the end of the rail, if any
 */
public record Housing(double depth, boolean glued, Optional<ScrewSet> screws) implements Joint {

  /** Checks the trench. */
  public Housing {
    JointFault.requirePositive("depth of the housing", depth);
  }

  /** A housing without screws. */
  public Housing(double depth, boolean glued) {
    this(depth, glued, Optional.empty());
  }

  @Override
  public String title() {
    return ScrewSet.held(glued, screws.isPresent()) + "housing";
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "depth of the housing", depth, members.postDepth() / 2, "half of the piece it is cut into");
    screws.ifPresent(
        set ->
            set.requireRoom(
                members.railDepth(),
                members.postDepth() - depth,
                1000,
                "longer screws are not made"));
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.housing(this);
  }
}
