package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.quantity.Length;

/**
 * Completes the screws of a joint. Screws are sold in steps of half a millimetre across and five
 * millimetres long.
 */
final class ScrewCompletion {

  private static final double THINNEST = 3;
  private static final double THICKEST = 6;
  private static final double STEP = 0.5;
  private static final double LENGTH_STEP = 5;

  /** Least distance from a loaded edge of slender screws in drilled holes, in diameters. */
  private static final double FROM_EDGE = 5;

  /** Part of the depth beyond which two screws would stand too close to each other. */
  private static final double FARTHEST = 0.28;

  /** Part of a wood screw's length that is threaded; the usual make. */
  private static final double THREADED = 2.0 / 3;

  private static final String PILOT = "most of the core of the screw";

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;

  ScrewCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
  }

  /** Through what is left of the rail into what is left of the post. */
  ScrewSet lap(double left) {
    double d =
        diameter(
            Math.min(Math.min(left / 3, place.postDepth() / 20), place.railDepth() / 18),
            "slender enough for the edges of the lap");
    double whole = place.postThickness() - LENGTH_STEP;
    double length =
        length(
            Math.floor(Math.min(left + 9 * d, whole) / LENGTH_STEP) * LENGTH_STEP,
            "nine diameters in the post, or as much as it has");
    return set(d, length, left);
  }

  /** Through the post into the end of the rail. */
  ScrewSet butt() {
    return intoEnd(place.postDepth());
  }

  /** Through what is left of the post behind the trench into the end of the rail. */
  ScrewSet housing(double depth) {
    return intoEnd(place.postDepth() - depth);
  }

  private ScrewSet intoEnd(double through) {
    double d = diameter(place.railThickness() / 7, "a seventh of the rail");
    double length =
        length(
            Math.ceil((through + 10 * d) / LENGTH_STEP) * LENGTH_STEP,
            "ten diameters in the end of the rail");
    return set(d, length, through);
  }

  private double diameter(double most, String reason) {
    double taken = Math.max(THINNEST, Math.min(THICKEST, Math.floor(most / STEP) * STEP));
    return given("screwDiameter", sketch.screwDiameter, taken, reason);
  }

  private double length(double taken, String reason) {
    return given("screwLength", sketch.screwLength, taken, reason);
  }

  private double given(String name, Optional<Length> given, double taken, String reason) {
    return sizes
        .answers()
        .or(
            sizes.key() + "." + name,
            given,
            Length.ofMm(taken),
            Length.ofMm(taken).toString(),
            reason)
        .mm();
  }

  private ScrewSet set(double d, double length, double through) {
    int count = sizes.count("screws", sketch.screws, 2);
    double edge =
        count == 1
            ? place.railDepth() / 2
            : given(
                "screwFromEdge",
                sketch.screwFromEdge,
                Math.floor(
                    Math.min(
                        Math.max(FROM_EDGE * d, place.railDepth() / 5),
                        FARTHEST * place.railDepth())),
                "five diameters, from a fifth of the depth to little more than a quarter");
    FixingScrew kind =
        sizes.word(
            "screw", sketch.screw, FixingScrew.WOOD_SCREW, FixingScrew::words, "the usual screw");
    boolean coach = kind == FixingScrew.COACH_SCREW;
    double pilot =
        given(
            "screwPilot",
            sketch.screwPilot,
            Math.round((coach ? 2.0 / 3 : 0.55) * d * 10) / 10.0,
            coach ? "two thirds of the screw" : PILOT);
    return new ScrewSet(screw(coach, d, length, through), count, edge, pilot);
  }

  private static Screw screw(boolean coach, double d, double length, double through) {
    return coach
        ? CoachScrew.plain(d, length, Math.max(d, length - through - d), 3 * d)
        : WoodScrew.plain(d, length, Math.min(length, Math.max(2 * d, THREADED * length)), 2 * d);
  }
}
