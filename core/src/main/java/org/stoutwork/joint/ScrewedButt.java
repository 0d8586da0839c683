package org.stoutwork.joint;

/**
 * The rail's end butted against the post and held by screws through the post into its end grain.
 *
 * @param screws along the depth of the rail, in the middle of its thickness
 */
public record ScrewedButt(ScrewSet screws) implements Joint {

  @Override
  public String title() {
    return "screwed butt joint";
  }

  @Override
  public void requireFits(Members members) {
    screws.requireRoom(
        members.railDepth(), members.postDepth(), 1000, "longer screws are not made");
    JointFault.requireAtMost(
        "screw diameter",
        screws.screw().diameter(),
        members.railThickness() / 2,
        "half of the thickness of the rail");
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.screwedButt(this);
  }
}
