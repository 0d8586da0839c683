package org.stoutwork.joint;

import org.stoutwork.fastener.Peg;

/**
 * The rail's end butted against the post and held by glued dowels along its depth.
 *
 * @param dowel one dowel
 * @param count at least 2
 * @param inRail length of dowel in the rail, mm
 * @param inPost length of dowel in the post, mm
 * @param spacing between dowels along the rail's depth, mm
 * @param edge distance of the lowest dowel from the rail's lower edge, mm
 */
public record DowelledButt(
    Peg dowel, int count, double inRail, double inPost, double spacing, double edge)
    implements Joint {

  /** Checks the dowels. */
  public DowelledButt {
    JointFault.requireCount("number of dowels", count, 2, 8);
    JointFault.requirePositive("length of dowel in the rail", inRail);
    JointFault.requirePositive("length of dowel in the post", inPost);
    JointFault.requireAtLeast(
        "dowel spacing", spacing, 1.5 * dowel.diameter(), "or the holes break into each other");
    JointFault.requireAtLeast(
        "edge distance of the dowel", edge, dowel.diameter(), "or the edge breaks out");
  }

  @Override
  public String title() {
    return "butt joint with %s dowels".formatted(count);
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "height taken by the dowels",
        (count - 1) * spacing + edge + dowel.diameter(),
        members.railDepth(),
        "the depth of the rail");
    JointFault.requireAtMost(
        "length of dowel in the post", inPost, members.postDepth() - 1, "or it comes out behind");
    JointFault.requireAtMost(
        "dowel diameter",
        dowel.diameter(),
        Math.min(members.railThickness(), members.postThickness()) / 2,
        "half of the thinner piece");
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.dowelledButt(this);
  }
}
