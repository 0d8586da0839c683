package org.stoutwork.joint;

import org.stoutwork.quantity.Length;

/**
 * A through tenon held by a loose wedge (tusk) behind the post, for stretchers that come apart.
 *
 * @param height of the tenon, mm
 * @param thickness of the tenon, mm
 * @param shoulderBelow mm
 * @param relish length of tenon beyond the wedge, mm
 * @param wedgeThickness along the tenon, at mid-height, mm
 * @param wedgeWidth across the tenon, inside it, mm
 * @param angle slope of the wedge's one sloping side, degrees
 */
public record LooseWedgeTenon(
    double height,
    double thickness,
    double shoulderBelow,
    double relish,
    double wedgeThickness,
    double wedgeWidth,
    double angle)
    implements Joint {

  /** Checks tenon and wedge. */
  public LooseWedgeTenon {
    JointFault.requirePositive("tenon height", height);
    JointFault.requirePositive("tenon thickness", thickness);
    JointFault.requireAtLeast("shoulder below the tenon", shoulderBelow, 0, "0 mm for none");
    JointFault.requirePositive("relish beyond the wedge", relish);
    JointFault.requirePositive("wedge thickness", wedgeThickness);
    JointFault.requirePositive("wedge width", wedgeWidth);
    JointFault.requireAtMost(
        "wedge width", wedgeWidth, thickness - 2, "the tenon's thickness with wood on both sides");
    if (!(angle > 0 && angle < 20)) {
      throw new IllegalArgumentException(
          "wedge slope %s° must lie between 0° and 20°; bench wedges have 4° to 8°"
              .formatted(angle));
    }
  }

  @Override
  public String title() {
    return "loose-wedge tenon";
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "tenon thickness",
        thickness,
        new JointFault.Most(
            members.postThickness() - 2,
            "what the %s post leaves with a cheek on either side"
                .formatted(Length.ofMm(members.postThickness()))),
        new JointFault.Most(members.railThickness(), "the thickness of the rail"));
    JointFault.requireAtMost(
        "tenon height with the shoulder below",
        height + shoulderBelow,
        members.railDepth(),
        "the depth of the rail");
    TenonMiddle.require(height, shoulderBelow, members);
    TenonMiddle.requireShoulder(thickness, height, shoulderBelow, members);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.looseWedgeTenon(this);
  }
}
