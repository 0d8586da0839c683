package org.stoutwork.joint;

import java.util.List;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.quantity.Length;

/**
 * A stub tenon drawn up by one or two bed bolts that run through the post into a nut in the rail.
 *
 * @param height of the stub tenon, mm
 * @param thickness of the stub tenon, mm
 * @param length of the stub tenon, mm
 * @param shoulderBelow mm
 * @param bolt with the washer on the post
 * @param bolts 1, or 2 one above the other
 * @param spacing between two bolts along the rail's depth, mm; 0 for one
 * @param nut in the rail
 * @param preload that one bolt keeps after tightening, N; 0 if it may work loose
 */
public record BoltedTenon(
    double height,
    double thickness,
    double length,
    double shoulderBelow,
    Bolt bolt,
    int bolts,
    double spacing,
    Nut nut,
    double preload)
    implements Joint {

  /**
   * A barrel nut, or a nut held captive in a slot of the rail.
   *
   * @param diameter of the barrel, or width of the captive nut's plate, mm
   * @param length across the rail's thickness that bears on wood, mm
   * @param fromEnd distance of its middle from the shoulder, mm
   * @param round whether it is a barrel
   */
  public record Nut(double diameter, double length, double fromEnd, boolean round) {

    /** Checks the nut. */
    public Nut {
      JointFault.requirePositive("nut diameter", diameter);
      JointFault.requirePositive("nut length", length);
      JointFault.requireAtLeast(
          "distance of the nut from the rail's end",
          fromEnd,
          diameter,
          "one diameter, or no wood is left to hold it");
    }
  }

  /** Wood beside a bore below which a drill runs out of the tenon, mm; project default. */
  private static final double LEAST_WALL = 2;

  /** Part of its thickness that a tenon must keep on either side of a bore; project default. */
  public static final double WALL_SHARE = 0.2;

  /** Checks tenon and bolts. */
  public BoltedTenon {
    JointFault.requirePositive("tenon height", height);
    JointFault.requirePositive("tenon thickness", thickness);
    JointFault.requirePositive("tenon length", length);
    JointFault.requireAtLeast("shoulder below the tenon", shoulderBelow, 0, "0 mm for none");
    JointFault.requireCount("number of bolts", bolts, 1, 2);
    if (bolts == 2) {
      JointFault.requireAtLeast(
          "bolt spacing", spacing, 2 * bolt.diameter(), "two diameters between bolts");
    }
    JointFault.requireAtLeast("preload", preload, 0, "0 for a bolt that may work loose");
    double bore = bolt.washer().hole();
    JointFault.requireAtLeast(
        "tenon thickness",
        thickness,
        bore + 2 * LEAST_WALL,
        "or the bolt's bore of %s cuts it in two; %s leave a quarter of it on either side"
            .formatted(Length.ofMm(bore), Length.ofMm(usualThickness(bore))));
  }

  /** Thickness of a tenon twice as thick as its bore, mm. */
  public static double usualThickness(double bore) {
    return 2 * bore;
  }

  /** Diameter of the hole that a bolt runs in, mm. */
  public double bore() {
    return bolt.washer().hole();
  }

  /** Heights of the bolts above the rail's lower edge, mm. */
  public List<Double> boltHeights(Members members) {
    double middle = members.railDepth() / 2;
    return bolts == 1 ? List.of(middle) : List.of(middle - spacing / 2, middle + spacing / 2);
  }

  /** Distances above the tenon's middle of the bores that run through the tenon, mm. */
  public List<Double> boreLevers(Members members) {
    double middle = shoulderBelow + height / 2;
    return boltHeights(members).stream()
        .map(bolt -> bolt - middle)
        .filter(lever -> Math.abs(lever) < (height + bore()) / 2)
        .toList();
  }

  /**
   * Length of bolt between washer and nut, mm.
   *
   * @param rod whether it runs on to a nut in a like rail on the other face of the post
   */
  public double gripLength(Members members, boolean rod) {
    return members.postDepth() + (rod ? 2 : 1) * nut.fromEnd();
  }

  @Override
  public String title() {
    return "stub tenon with " + (bolts == 1 ? "a bed bolt" : "two bed bolts");
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
    TenonMiddle.requireShoulder(thickness, height, shoulderBelow, members);
    JointFault.requireAtMost(
        "tenon length", length, members.postDepth() - 1, "or the mortise comes out at the back");
    JointFault.requireAtMost(
        "nut length", nut.length(), members.railThickness(), "the thickness of the rail");
    JointFault.requireAtMost(
        "bolt spacing",
        spacing,
        members.railDepth() - 2 * bolt.diameter(),
        "the depth of the rail less a diameter beyond each bolt");
    for (double lever : boreLevers(members)) {
      JointFault.requireAtLeast(
          "tenon height",
          height,
          2 * Math.abs(lever) + bore(),
          "or the bore of a bolt runs out at its edge; or put the bolts clear of it");
    }
    JointFault.requireAtMost(
        "washer diameter",
        bolt.washer().outer(),
        members.postThickness(),
        "the thickness of the post");
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.boltedTenon(this);
  }
}
