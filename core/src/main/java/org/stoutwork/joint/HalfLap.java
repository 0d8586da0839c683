package org.stoutwork.joint;

import java.util.Optional;

/**
 * A half-lap: both pieces cut away and laid over each other.
 *
 * @param railPart thickness left on the rail, mm
 * @param glued whether the faces are glued
 * @param corner whether the post ends here too
 * @param screws through the rail into the post, if any
 */
public record HalfLap(double railPart, boolean glued, boolean corner, Optional<ScrewSet> screws)
    implements Joint {

  /** Checks the lap. */
  public HalfLap {
    JointFault.requirePositive("thickness left on the rail", railPart);
  }

  /** A lap without screws. */
  public HalfLap(double railPart, boolean glued, boolean corner) {
    this(railPart, glued, corner, Optional.empty());
  }

  /** Thickness left on the post, mm. */
  public double postPart(Members members) {
    return members.postThickness() - railPart;
  }

  @Override
  public String title() {
    return ScrewSet.held(glued, screws.isPresent()) + (corner ? "corner half-lap" : "half-lap");
  }

  @Override
  public void requireFits(Members members) {
    double limit = Math.min(members.railThickness(), members.postThickness()) - 1;
    JointFault.requireAtMost(
        "thickness left on the rail", railPart, limit, "or nothing is left of the other piece");
    screws.ifPresent(
        set ->
            set.requireRoom(
                members.railDepth(),
                railPart,
                members.postThickness() - 1,
                "or it comes out of the post"));
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.halfLap(this);
  }
}
