package org.stoutwork.joint;

/**
 * An open bridle: a tongue as deep as the rail in an open slot of the post.
 *
 * @param thickness of one tongue, mm
 * @param count 1, or 2 for a double bridle
 * @param corner whether the post ends here too (a corner bridle)
 * @param fit how the tongue is held
 */
public record Bridle(double thickness, int count, boolean corner, Fit fit) implements Joint {

  /** Checks the tongue. */
  public Bridle {
    JointFault.requirePositive("tongue thickness", thickness);
    JointFault.requireCount("number of tongues", count, 1, 2);
    if (fit instanceof Fit.Wedged) {
      throw new IllegalArgumentException(
          "a bridle cannot be wedged: its slot is open; glue it or peg it");
    }
  }

  /** Width of post taken by the slots and what stands between them, mm. */
  public double slotWidth() {
    return (2 * count - 1) * thickness;
  }

  /** Thickness of an outer cheek, mm. */
  public double cheek(Members members) {
    return (members.postThickness() - slotWidth()) / 2;
  }

  @Override
  public String title() {
    return (fit.glued() ? "glued " : "dry ")
        + (count == 2 ? "double " : "")
        + (corner ? "corner bridle" : "open bridle");
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "tongue thickness",
        slotWidth(),
        Math.min(members.postThickness() - 2, members.railThickness()),
        "the thickness of the rail and of the post with two cheeks");
    if (fit instanceof Fit.Pegged pegged) {
      JointFault.requireAtMost(
          "distance of the peg from the shoulder",
          pegged.fromShoulder(),
          members.postDepth() - pegged.peg().diameter() / 2,
          "or the peg passes beyond the tongue");
    }
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.bridle(this);
  }
}
