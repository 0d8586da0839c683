package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * The height of a rail or stretcher, which a maker gives by its top edge, its bottom edge or its
 * middle, but by one of them only.
 *
 * @param topEdge height of the top edge
 * @param bottomEdge height of the bottom edge
 * @param centre height of the middle
 */
record Heights(Optional<Length> topEdge, Optional<Length> bottomEdge, Optional<Length> centre) {

  /**
   * The room a piece has.
   *
   * @param floor lowest place of its bottom edge, mm
   * @param ceiling highest place of its top edge, mm
   * @param usualBottom where its bottom edge is by default, mm
   */
  record Room(double floor, double ceiling, double usualBottom) {}

  static Heights of(RailSketch rail) {
    return new Heights(rail.topEdgeAt, rail.bottomEdgeAt, rail.centreAt);
  }

  static Heights of(StretcherSketch stretcher) {
    return new Heights(stretcher.topEdgeAt, stretcher.bottomEdgeAt, stretcher.centreAt);
  }

  /** Refuses a height where the place follows from other parts. */
  static void refuse(Answers answers, String key, RailSketch rail, String why) {
    Heights given = of(rail);
    given
        .topEdge()
        .or(given::bottomEdge)
        .or(given::centre)
        .ifPresent(
            h ->
                answers.fault(
                    key + "." + given.word(), h.toString(), why + "; leave the height out"));
  }

  /** The height of the middle, from whichever was given, or by default. */
  static Length centre(
      Answers answers, String key, Heights given, double depth, Room room, String reason) {
    long count =
        given.topEdge().stream().count()
            + given.bottomEdge().stream().count()
            + given.centre().stream().count();
    if (count > 1) {
      answers.fault(
          key, "given more than one height", "keep one of topEdgeAt, bottomEdgeAt and centreAt");
    }
    double middle =
        given
            .centre()
            .map(Length::mm)
            .or(() -> given.topEdge().map(t -> t.mm() - depth / 2))
            .or(() -> given.bottomEdge().map(b -> b.mm() + depth / 2))
            .orElse(Double.NaN);
    if (Double.isNaN(middle)) {
      Length bottom =
          answers.or(
              key + ".bottomEdgeAt",
              Optional.empty(),
              Length.ofMm(room.usualBottom()),
              Length.ofMm(room.usualBottom()).toString(),
              reason);
      return Length.ofMm(bottom.mm() + depth / 2);
    }
    requireRoom(answers, key + "." + given.word(), middle, depth, room);
    return Length.ofMm(middle);
  }

  private static void requireRoom(
      Answers answers, String key, double middle, double depth, Room room) {
    double slack = 1e-6;
    boolean low = middle - depth / 2 < room.floor() - slack;
    boolean high = middle + depth / 2 > room.ceiling() + slack;
    if (low || high) {
      answers.fault(
          key,
          "such that the piece lies from %s to %s above the floor"
              .formatted(Length.ofMm(middle - depth / 2), Length.ofMm(middle + depth / 2)),
          "there is room from %s to %s"
              .formatted(Length.ofMm(room.floor()), Length.ofMm(room.ceiling())));
    }
  }

  private String word() {
    if (topEdge.isPresent()) {
      return "topEdgeAt";
    }
    return bottomEdge.isPresent() ? "bottomEdgeAt" : "centreAt";
  }
}
