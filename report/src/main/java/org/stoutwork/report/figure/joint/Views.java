package org.stoutwork.report.figure.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.joint.Joint;
import org.stoutwork.report.drawing.Point;

/**
 * The two views of a joint and the pieces that all joints share. In the section the shoulder is at
 * nought, the rail runs to the right and the post lies to the left of it; heights are counted from
 * the rail's lower edge. In the cut at the shoulder nought is the middle of the post.
 */
final class Views {

  private static final double LEAST_BEYOND = 12;
  private static final double BEYOND = 0.18;

  final JointView section;
  final JointView shoulder;
  final Place place;
  private final double stub;
  private final double beyond;
  private double railMiddle;

  /**
   * @param section empty view along the frame
   * @param shoulder empty view against the shoulder
   * @param place pieces to draw
   * @param reach length of rail that the joint needs to show, mm
   */
  Views(JointView section, JointView shoulder, Place place, double reach) {
    this.section = section;
    this.shoulder = shoulder;
    this.place = place;
    this.beyond = Math.max(LEAST_BEYOND, BEYOND * depth());
    this.stub = Math.max(0.4 * depth(), reach + LEAST_BEYOND);
  }

  /** Lays the front faces of rail and post in one plane; else their middles are. */
  Views flush() {
    railMiddle = (members().railThickness() - members().postThickness()) / 2;
    return this;
  }

  /** Depth of the rail, mm. */
  double depth() {
    return members().railDepth();
  }

  /** Depth of the post behind the shoulder, mm. */
  double post() {
    return members().postDepth();
  }

  Joint.Members members() {
    return place.members();
  }

  private boolean crossing() {
    return place.run() == Place.Run.CROSSING;
  }

  private double up() {
    return crossing() ? place.above() : Math.min(place.above(), beyond);
  }

  private double down() {
    return crossing() ? place.below() : Math.min(place.below(), beyond);
  }

  /** Half of the post's width that is drawn. */
  private double half() {
    double width = members().postThickness() / 2;
    return crossing() ? Math.min(width, members().railThickness() / 2 + beyond) : width;
  }

  /** The post in the section, cut through. */
  Views postCut() {
    section.cut(-post(), -down(), 0, depth() + up());
    return postBroken();
  }

  /** The post in the section, seen. */
  Views postSeen() {
    section.seen(-post(), -down(), 0, depth() + up());
    return postBroken();
  }

  private Views postBroken() {
    if (!crossing() && place.above() > beyond) {
      section.broken(-post(), depth() + up(), 0, depth() + up());
    }
    if (!crossing() && place.below() > beyond) {
      section.broken(-post(), -down(), 0, -down());
    }
    return this;
  }

  /** The rail in the section with what it sends into the post, given from above to below. */
  Views rail(Point... inside) {
    List<Point> outline = new ArrayList<>();
    outline.add(new Point(stub, 0));
    outline.add(new Point(stub, depth()));
    outline.add(new Point(0, depth()));
    outline.addAll(List.of(inside));
    outline.add(new Point(0, 0));
    section.seen(outline).broken(stub, 0, stub, depth());
    return this;
  }

  /** The post at the shoulder and, in outline, where the rail stood. */
  Views faces() {
    double h = half();
    shoulder.seen(-h, -down(), h, depth() + up());
    if (crossing()) {
      if (h < members().postThickness() / 2) {
        shoulder.broken(-h, -down(), -h, depth() + up()).broken(h, -down(), h, depth() + up());
      }
    } else {
      if (place.above() > beyond) {
        shoulder.broken(-h, depth() + up(), h, depth() + up());
      }
      if (place.below() > beyond) {
        shoulder.broken(-h, -down(), h, -down());
      }
    }
    double b = members().railThickness() / 2;
    shoulder.hidden(railMiddle - b, 0, railMiddle + b, depth());
    return this;
  }

  /** Depth of the post, in the row given or the next with room. */
  Views postDepth(int row) {
    section.below(-post(), -down(), 0, -down(), row);
    return this;
  }

  /** Depth of the rail, and the thicknesses of both pieces from the row given on. */
  Views sizes(int row) {
    double b = members().railThickness() / 2;
    shoulder.right(railMiddle + b, 1, 0, depth());
    shoulder.below(railMiddle - b, 0, railMiddle + b, 0, row);
    if (!crossing()) {
      shoulder.below(-half(), -down(), half(), -down(), row + 1);
    }
    return this;
  }

  /** Tenons side by side in the cut at the shoulder, with cheeks and thicknesses. */
  Views tenons(double low, double height, double thickness, int count, double offCentre) {
    double from = offCentre - (2 * count - 1) * thickness / 2;
    for (int i = 0; i < count; i++) {
      double x = from + 2 * i * thickness;
      shoulder.cutOtherwise(x, low, x + thickness, low + height);
    }
    double x = from;
    for (int i = 0; i < 2 * count - 1; i++) {
      shoulder.below(x, low, x + thickness, low, 0);
      x += thickness;
    }
    if (!crossing()) {
      shoulder.below(-half(), -down(), from, low, 0);
      shoulder.below(x, low, half(), -down(), 0);
    }
    return this;
  }
}
