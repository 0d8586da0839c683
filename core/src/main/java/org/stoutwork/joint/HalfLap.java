package org.stoutwork.joint;

/**
 * A half-lap: both pieces cut away and laid over each other.
 *
 * @param railPart thickness left on the rail, mm
 * @param glued whether the faces are glued
 * @param corner whether the post ends here too
 */
public record HalfLap(double railPart, boolean glued, boolean corner) implements Joint {

  /** Checks the lap. */
  public HalfLap {
    JointFault.requirePositive("thickness left on the rail", railPart);
  }

  /** Thickness left on the post, mm. */
  public double postPart(Members members) {
    return members.postThickness() - railPart;
  }

  @Override
  public String title() {
    return (glued ? "glued " : "dry ") + (corner ? "corner half-lap" : "half-lap");
  }

  @Override
  public void requireFits(Members members) {
    double limit = Math.min(members.railThickness(), members.postThickness()) - 1;
    JointFault.requireAtMost(
        "thickness left on the rail", railPart, limit, "or nothing is left of the other piece");
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.halfLap(this);
  }
}
