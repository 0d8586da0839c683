package org.stoutwork.joint;

import java.util.Optional;
import org.stoutwork.quantity.Writing;

/**
 * A mortise and tenon, blind or through, single or twin, with or without a haunch.
 *
 * @param height h of the tenon along the rail's depth, mm
 * @param thickness t of one tenon, mm
 * @param length l into the mortise, mm
 * @param shoulderBelow s_b, mm; what remains above is shoulder or haunch
 * @param offCentre distance of the tenon's middle from the middle of the post, mm
 * @param count 1, or 2 for a twin tenon whose parts stand one thickness apart
 * @param through whether the mortise goes through the post
 * @param haunch the shorter part above the tenon, if any
 * @param fit how the tenon is held
 */
public record MortiseAndTenon(
    double height,
    double thickness,
    double length,
    double shoulderBelow,
    double offCentre,
    int count,
    boolean through,
    Optional<Haunch> haunch,
    Fit fit)
    implements Joint {

  /**
   * The short part of a haunched tenon.
   *
   * @param height along the rail's depth, mm
   * @param length into the post, mm
   */
  public record Haunch(double height, double length) {

    /** Checks that there is a haunch. */
    public Haunch {
      JointFault.requirePositive("haunch height", height);
      JointFault.requirePositive("haunch length", length);
    }
  }

  /** Checks what the tenon itself must satisfy. */
  public MortiseAndTenon {
    JointFault.requirePositive("tenon height", height);
    JointFault.requirePositive("tenon thickness", thickness);
    JointFault.requirePositive("tenon length", length);
    JointFault.requireAtLeast("shoulder below the tenon", shoulderBelow, 0, "0 mm for none");
    JointFault.requireCount("number of tenons", count, 1, 2);
    final double tenonLength = length;
    haunch.ifPresent(
        h ->
            JointFault.requireAtMost(
                "haunch length", h.length(), tenonLength, "the length of the tenon"));
    if (fit instanceof Fit.Pegged pegged) {
      requirePegsInside(pegged, height, length);
    }
    if (fit instanceof Fit.Wedged wedged) {
      JointFault.requireAtMost("length of the kerf", wedged.kerf(), length, "the tenon's length");
      JointFault.requireAtMost(
          "distance of the kerf from the edge",
          wedged.leaf(),
          height / 2,
          "half the tenon's height");
    }
  }

  private static void requirePegsInside(Fit.Pegged pegged, double height, double length) {
    double radius = pegged.peg().diameter() / 2;
    JointFault.requireAtMost(
        "distance of the peg from the shoulder",
        pegged.fromShoulder(),
        length - radius,
        "or the peg passes beyond the tenon");
    JointFault.requireAtMost(
        "height taken by the pegs",
        (pegged.pegs() - 1) * pegged.spacing() + 2 * radius,
        height,
        "the height of the tenon");
  }

  /** Width of post taken by the mortise or mortises and what stands between them, mm. */
  public double mortiseWidth() {
    return (2 * count - 1) * thickness;
  }

  /** The thinner wall of the mortise, mm. */
  public double cheek(Members members) {
    return (members.postThickness() - mortiseWidth()) / 2 - Math.abs(offCentre);
  }

  /** What remains of the rail's depth above the tenon, mm. */
  public double shoulderAbove(Members members) {
    return members.railDepth() - height - shoulderBelow;
  }

  @Override
  public String title() {
    String held = fit.glued() ? "glued " : "dry ";
    if (fit instanceof Fit.Pegged pegged) {
      held += pegged.drawbored() ? "drawbored " : "pegged ";
    } else if (fit instanceof Fit.Wedged) {
      held += through ? "wedged " : "fox-wedged ";
    }
    return held
        + (through ? "through " : "")
        + (haunch.isPresent() ? "haunched " : "")
        + (count == 2 ? "twin " : "")
        + "mortise and tenon";
  }

  @Override
  public void requireFits(Members members) {
    JointFault.requireAtMost(
        "tenon thickness",
        mortiseWidth(),
        new JointFault.Most(
            members.postThickness() - 2 * Math.abs(offCentre) - 2,
            "what the %s mm post leaves with a cheek on either side"
                .formatted(plain(members.postThickness()))),
        new JointFault.Most(members.railThickness(), "the thickness of the rail"));
    JointFault.requireAtMost(
        "tenon height with the shoulder below",
        height + shoulderBelow,
        members.railDepth(),
        "the depth of the rail");
    TenonMiddle.require(height, shoulderBelow, members);
    TenonMiddle.requireShoulder(mortiseWidth(), height, shoulderBelow, members);
    haunch.ifPresent(
        h ->
            JointFault.requireAtMost(
                "haunch height",
                h.height(),
                shoulderAbove(members),
                "what is left above the tenon"));
    requireLengthFits(members);
  }

  private void requireLengthFits(Members members) {
    if (through) {
      JointFault.requireAtLeast(
          "tenon length", length, members.postDepth(), "or the tenon does not come through");
    } else {
      JointFault.requireAtMost(
          "tenon length",
          length,
          members.postDepth() - 1,
          "or the mortise comes out at the back: make the tenon shorter or through");
    }
  }

  /** Length of tenon inside the post, mm. */
  public double lengthInPost(Members members) {
    return Math.min(length, members.postDepth());
  }

  private static String plain(double value) {
    return Writing.number(value, 4);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.mortiseAndTenon(this);
  }
}
