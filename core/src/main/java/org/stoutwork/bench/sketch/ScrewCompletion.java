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

  /** What a screw of a lap holds down, in diameters at least; common practice, no source. */
  private static final double HELD_DOWN = 3;

  /** Least length of a wood screw in the second piece, in diameters. */
  private static final double REACH = 6;

  private static final String PILOT = "most of the core of the screw";

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;

  ScrewCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
  }

  /**
   * Through what is left of the rail into what is left of the post: the thickest that keep their
   * distances there.
   *
   * @param left thickness left on the rail, mm
   * @param glued whether the lap is glued, so that they only press it
   */
  ScrewSet lap(double left, boolean glued) {
    LapScrews room =
        new LapScrews(
            place.postDepth(),
            place.railDepth(),
            place.beyond(),
            !glued,
            sketch.screwPilot.filter(hole -> !(hole.mm() > 0)).isEmpty());
    double whole = Math.floor((place.postThickness() - LENGTH_STEP) / LENGTH_STEP) * LENGTH_STEP;
    int usual = sketch.screws.orElse(2);
    Optional<Double> found = thickest(room, usual, left, whole);
    int count = usual;
    if (found.isEmpty() && glued && sketch.screws.isEmpty()) {
      found = thickest(room, 1, left, whole);
      count = found.isPresent() ? 1 : usual;
    }
    double d =
        given(
            "screwDiameter",
            sketch.screwDiameter,
            found.orElse(THINNEST),
            found.isPresent()
                ? "the thickest that keeps its distances in the lap and reaches six diameters into"
                    + " the post"
                : "the thinnest; the lap is too small for any usual screw");
    double length =
        given(
            "screwLength",
            sketch.screwLength,
            Math.min(Math.floor((left + 9 * d) / LENGTH_STEP) * LENGTH_STEP, whole),
            "nine diameters in the post, or as much as it has");
    count =
        count == 1 && sketch.screws.isEmpty() ? one() : sizes.count("screws", sketch.screws, count);
    double edge = room.fromEdge(d, count).orElse(Math.floor(usualEdge(d)));
    return set(d, length, left, count, edge, "as its distances ask, at least a fifth of the depth");
  }

  private int one() {
    return sizes
        .answers()
        .or(sizes.key() + ".screws", Optional.empty(), 1, "1", "the lap has no room for two");
  }

  /** The thickest usual screw, or the one that was given, if so many fit the lap; mm. */
  private Optional<Double> thickest(LapScrews room, int count, double left, double whole) {
    double stout = Math.min(THICKEST, Math.floor(left / HELD_DOWN / STEP) * STEP);
    double from = sketch.screwDiameter.map(Length::mm).orElse(stout);
    double to = sketch.screwDiameter.isPresent() ? from : THINNEST;
    for (double d = from; d >= to; d -= STEP) {
      boolean placed =
          sketch.screwFromEdge.isPresent()
              ? room.fits(d, count, sketch.screwFromEdge.get().mm())
              : room.fromEdge(d, count).isPresent();
      if (placed && whole - left >= REACH * d) {
        return Optional.of(d);
      }
    }
    return Optional.empty();
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
    return set(
        d,
        length,
        through,
        sizes.count("screws", sketch.screws, 2),
        Math.floor(usualEdge(d)),
        "five diameters, from a fifth of the depth to little more than a quarter");
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

  private double usualEdge(double d) {
    double depth = place.railDepth();
    return Math.min(Math.max(FROM_EDGE * d, depth / 5), FARTHEST * depth);
  }

  private ScrewSet set(
      double d, double length, double through, int count, double usualEdge, String reason) {
    double edge =
        count == 1
            ? place.railDepth() / 2
            : given("screwFromEdge", sketch.screwFromEdge, usualEdge, reason);
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
