package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * The screws that a maker would hold a top with: as thick as the thinnest top rail and the top's
 * own thickness let them be.
 */
final class TopScrewSize {

  private static final double USUAL = 8;

  /** Sizes that are sold, mm, thickest first. */
  private static final List<Double> SIZES = List.of(USUAL, 6.0, 5.0, 4.5, 4.0, 3.5, 3.0);

  /** Below it coach screws are not made, mm. */
  static final double THINNEST_COACH_SCREW = 6;

  /** Rail over screw, with a little more than its edges ask of an idle screw. */
  private static final double STOUT = 6.2;

  private static final double SLENDER = 7;

  /** Part of a top that a default thread and its tip take at most. */
  static final double OF_TOP = 0.85;

  private TopScrewSize() {}

  /**
   * Diameters of thread in the top: what EN 1995-1-1 8.7.2 asks for before it counts on a coach
   * screw, and one more for the tip that a wood screw has in its thread.
   */
  static int threadDiameters(boolean coachScrew) {
    return coachScrew ? 6 : 7;
  }

  /**
   * Length of the tip beyond the thread, in diameters: the thread of wood screws has it in itself.
   */
  static int tipDiameters(boolean coachScrew) {
    return coachScrew ? 1 : 0;
  }

  /**
   * Diameter for rails that the sketch speaks of, mm.
   *
   * @param top thickness of the top, mm
   */
  static double of(BenchSketch sketch, double top) {
    double rail = thinnestRail(sketch);
    return SIZES.stream()
        .filter(d -> d * (d > THINNEST_COACH_SCREW ? STOUT : SLENDER) <= rail)
        .filter(d -> depth(d) <= OF_TOP * top)
        .findFirst()
        .orElse(SIZES.get(SIZES.size() - 1));
  }

  /** Depth of a default thread with its tip, mm. */
  private static double depth(double d) {
    boolean coach = d >= THINNEST_COACH_SCREW;
    return d * (threadDiameters(coach) + tipDiameters(coach));
  }

  static String reason(double diameter) {
    return diameter == USUAL
        ? "a usual coach screw"
        : "as thick as the edges of the top rail and the thickness of the top allow";
  }

  /** That of usual legs where nothing is said of rails or legs. */
  private static double thinnestRail(BenchSketch sketch) {
    EndFrameSketch shared = sketch.everyEndFrame.orElseGet(EndFrameSketch::new);
    return (sketch.endFrames.isEmpty() ? List.of(new EndFrameSketch()) : sketch.endFrames)
        .stream()
            .map(own -> rail(own, shared).or(() -> usualRail(sketch)))
            .flatMap(Optional::stream)
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
  }

  private static Optional<Double> usualRail(BenchSketch sketch) {
    double height = sketch.height.map(Length::mm).orElse(Completion.USUAL_HEIGHT);
    return Optional.of(FrameCompletion.usualRail(FrameCompletion.usualLeg(height)));
  }

  private static Optional<Double> rail(EndFrameSketch own, EndFrameSketch shared) {
    return own.topRail
        .flatMap(r -> r.thickness)
        .or(() -> shared.topRail.flatMap(r -> r.thickness))
        .map(t -> t.mm())
        .or(
            () ->
                own.legs
                    .flatMap(l -> l.along)
                    .or(() -> shared.legs.flatMap(l -> l.along))
                    .map(a -> FrameCompletion.usualRail(a.mm())));
  }
}
