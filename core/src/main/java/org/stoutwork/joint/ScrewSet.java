package org.stoutwork.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.fastener.Screw;

/**
 * The screws of a joint, spread over the depth of the rail.
 *
 * @param screw one of them
 * @param count how many, 1 to 8
 * @param fromEdge of the outermost from the rail's edges, mm; says nothing for one
 * @param pilot diameter of the hole drilled for the thread, mm; 0 for none
 */
public record ScrewSet(Screw screw, int count, double fromEdge, double pilot) {

  /** How far screws in a lap stand off its middle to either side at most, part of its width. */
  private static final double OFF_THE_LINE = 0.125;

  /** Wood that a screw at its full strength asks for to a loaded end, in diameters; EN 1995-1-1. */
  private static final double FROM_END = 12;

  /** Checks the screws. */
  public ScrewSet {
    JointFault.requireCount("number of screws", count, 1, 8);
    JointFault.requirePositive("distance of the screws from the edge", fromEdge);
    JointFault.requireAtLeast("hole drilled for the screw", pilot, 0, "0 mm for none");
    JointFault.requireAtMost(
        "hole drilled for the screw", pilot, screw.diameter(), "the diameter of the screw");
  }

  /** Heights of the screws above the lower edge of a rail, mm; one stands in the middle. */
  public List<Double> heights(double depth) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      out.add(count == 1 ? depth / 2 : fromEdge + i * pitch(depth));
    }
    return out;
  }

  /** From one screw to the next over the depth of a rail, mm; 0 for one. */
  public double pitch(double depth) {
    return count == 1 ? 0 : (depth - 2 * fromEdge) / (count - 1);
  }

  /**
   * How far the next screw of a lap stands beside the one before, along the rail, mm: to split
   * less, but no farther than the ends of a narrow lap let them.
   */
  public double stagger(double lap) {
    return stagger(lap, count, screw.diameter());
  }

  /** The same of screws that are still to be chosen, in whole mm where the ends limit it; in mm. */
  public static double stagger(double lap, int count, double diameter) {
    double room = Math.floor(Math.max(0, lap - 2 * FROM_END * diameter));
    return count == 1 ? 0 : Math.min(2 * OFF_THE_LINE * lap, room);
  }

  /** Place of a screw in a lap along the rail, from the middle, mm: turn by turn left and right. */
  public double beside(int i, double lap) {
    return (i % 2 == 0 ? -0.5 : 0.5) * stagger(lap);
  }

  /**
   * How far the centre of the screws of a lap lies beside the middle of the lap, along the rail,
   * mm: 0 for one and for an even number, towards the side that has one more for an odd one.
   */
  public double offCentre(double lap) {
    return count % 2 == 0 || count == 1 ? 0 : stagger(lap) / 2 / count;
  }

  /** Distance along the rail of the farthest screw of a lap from their centre, mm; 0 for one. */
  public double farBeside(double lap) {
    return stagger(lap) / 2 + offCentre(lap);
  }

  /** Sum of the squared distances of the screws of a lap from their centre, mm²; 0 for one. */
  public double squares(double lap, double depth) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double z = heights(depth).get(i) - depth / 2;
      double x = beside(i, lap) + offCentre(lap);
      sum += x * x + z * z;
    }
    return sum;
  }

  /** What a maker calls them, such as {@code 3 screws 4.5 × 50 mm}. */
  public String words() {
    return (count == 1 ? "one screw, " : count + " screws, each ") + screw.title();
  }

  /** How a joint is held, ready to stand before its name. */
  static String held(boolean glued, boolean screwed) {
    if (screwed) {
      return glued ? "glued and screwed " : "screwed ";
    }
    return glued ? "glued " : "dry ";
  }

  void requireRoom(double depth, double through, double most, String why) {
    if (count > 1) {
      JointFault.requireAtMost(
          "height taken by the screws",
          2 * fromEdge + (count - 1) * screw.diameter(),
          depth - 1,
          "the depth of the rail");
    }
    JointFault.requireAtLeast(
        "length of the screw",
        screw.length(),
        through + screw.diameter(),
        "or it does not reach into the second piece");
    JointFault.requireAtMost("length of the screw", screw.length(), most, why);
  }
}
