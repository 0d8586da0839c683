package org.stoutwork.joint.tenon;

import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.section.NetSection;
import org.stoutwork.section.Opening;
import org.stoutwork.section.PiercedSection;
import org.stoutwork.section.Rectangle;

/** What mortises leave of a post. */
public final class Mortises {

  /** Least share of the post's area that must stay at a joint; judgement. */
  public static final double LEAST_SHARE = 0.3;

  private Mortises() {}

  /**
   * A mortise seen in the cross-section of the post.
   *
   * @param width along the face it enters, mm
   * @param depth into the post, mm
   * @param fromEdge distance of its middle from the lower edge of that face, mm
   */
  public record Cut(double width, double depth, double fromEdge) {

    /** Checks that there is a cut. */
    public Cut {
      if (!(width > 0 && depth > 0)) {
        throw new IllegalArgumentException(
            "a mortise needs width and depth above 0 mm; they were %s, %s".formatted(width, depth));
      }
    }
  }

  /**
   * The area left where two mortises enter adjoining faces of one post at one height, mm².
   *
   * @param postDepth side that the first mortise runs along, mm
   * @param postThickness the other side, mm
   * @param first entered through the face of width postThickness
   * @param second entered through the face of width postDepth
   * @throws IllegalArgumentException if less than {@link #LEAST_SHARE} of the post is left
   */
  public static double remainingSection(
      double postDepth, double postThickness, Cut first, Cut second) {
    double gross = postDepth * postThickness;
    double left =
        remaining(
            new Rectangle(postDepth, postThickness),
            List.of(
                new PiercedSection.Hole(
                    -postDepth / 2,
                    Math.min(first.depth(), postDepth) - postDepth / 2,
                    first.fromEdge() - (postThickness + first.width()) / 2,
                    first.fromEdge() - (postThickness - first.width()) / 2),
                new PiercedSection.Hole(
                    second.fromEdge() - (postDepth + second.width()) / 2,
                    second.fromEdge() - (postDepth - second.width()) / 2,
                    -postThickness / 2,
                    Math.min(second.depth(), postThickness) - postThickness / 2)));
    if (left < LEAST_SHARE * gross) {
      throw new IllegalArgumentException(
          "mortises leave %s of the post's %s: at least %s must stay; make the tenons thinner or shorter, or let one stand above the other"
              .formatted(area(left), area(gross), area(LEAST_SHARE * gross)));
    }
    return left;
  }

  /** What holes that may meet leave of a post, mm²; 0 if they leave nothing. */
  public static double remaining(Rectangle post, List<PiercedSection.Hole> holes) {
    try {
      return new PiercedSection(post, holes).area();
    } catch (IllegalArgumentException nothingLeft) {
      return 0;
    }
  }

  /** Where the two mortises meet inside the post, mm². */
  public static double overlap(double postDepth, double postThickness, Cut first, Cut second) {
    double x = within(0, Math.min(first.depth(), postDepth), second.fromEdge(), second.width());
    double y = within(0, Math.min(second.depth(), postThickness), first.fromEdge(), first.width());
    return x * y;
  }

  private static double within(double from, double to, double middle, double width) {
    double low = Math.max(from, middle - width / 2);
    double high = Math.min(to, middle + width / 2);
    return Math.max(0, high - low);
  }

  /**
   * The post's section at a mortise, for bending in the plane of the rail.
   *
   * @param area mm²
   * @param secondMoment mm⁴
   * @param modulus mm³, on the weaker face
   */
  public record Net(double area, double secondMoment, double modulus) {}

  /**
   * The post's section at a mortise, for bending in the plane of the rail. A glued tenon still
   * counts as a hole.
   *
   * @param postDepth in the plane of bending, mm
   * @param postThickness mm
   * @param width of the mortise, mm
   * @param depth of the mortise into the post from one face, mm; the whole depth if through
   */
  public static Net section(double postDepth, double postThickness, double width, double depth) {
    if (depth >= postDepth) {
      Rectangle cheeks = new Rectangle(postThickness - width, postDepth);
      return new Net(cheeks.area(), cheeks.secondMoment(), cheeks.sectionModulus());
    }
    NetSection net =
        new NetSection(
            new Rectangle(postThickness, postDepth),
            new Opening(width, depth, (postDepth - depth) / 2));
    return new Net(net.area(), net.secondMoment(), net.sectionModulus());
  }

  private static String area(double value) {
    return Writing.with(value, Unit.MM2, 4);
  }
}
