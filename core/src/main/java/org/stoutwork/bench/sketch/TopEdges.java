package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.EndCap;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.quantity.Length;

/** Completes what goes round a top: end caps and lipping. */
final class TopEdges {

  private static final String CAP = "top.endCap.";
  private static final String LIP = "top.lipping.";

  private final Answers answers;
  private final double width;

  TopEdges(Answers answers, double width) {
    this.answers = answers;
    this.width = width;
  }

  EndCap endCap(EndCapSketch c) {
    Length board =
        answers.length(CAP + "width", c.width, () -> 70.0, new Range(20, 300), "a usual end cap");
    boolean glued =
        answers.or(
            CAP + "hold",
            c.glued,
            false,
            "glued in the middle",
            "so that the top can move, pegged in slots towards the edges");
    if (glued) {
      c.slot.ifPresent(
          s ->
              answers.fault(
                  CAP + "slot",
                  s.toString(),
                  "an end cap glued over its whole length has no slots; leave them out"));
      return new EndCap(board, true, Length.ofMm(0));
    }
    Length slot =
        answers.length(
            CAP + "slot",
            c.slot,
            () -> Math.ceil(width / 100),
            new Range(0, 60),
            "a hundredth of the width, to the next millimetre");
    return new EndCap(board, false, slot);
  }

  Lipping lipping(LippingSketch l) {
    Lipping.Edges edges =
        answers.or(
            LIP + "edges",
            l.edges,
            Lipping.Edges.LONG,
            Lipping.Edges.LONG.words(),
            "where wood can be lipped without harm");
    Length thickness =
        answers.length(
            LIP + "thickness", l.thickness, () -> 12.0, new Range(2, 60), "a usual lipping");
    boolean nailed = answers.or(LIP + "hold", l.nailed, false, "glued", "the usual way");
    if (!nailed) {
      return new Lipping(edges, thickness, new Lipping.Hold.Glued());
    }
    return new Lipping(edges, thickness, nails(l, thickness.mm()));
  }

  private Lipping.Hold nails(LippingSketch l, double thickness) {
    Length diameter =
        answers.length(
            LIP + "nailDiameter",
            l.nailDiameter,
            () -> Math.max(1.2, thickness / 7),
            new Range(0.8, 6),
            "a seventh of the lipping");
    Length length =
        answers.length(
            LIP + "nailLength",
            l.nailLength,
            () -> Math.ceil(thickness + 12 * diameter.mm()),
            new Range(10, 200),
            "twelve diameters in the top");
    if (length.mm() <= thickness) {
      answers.fault(
          LIP + "nailLength",
          length.toString(),
          "more than the %s of the lipping, or the nail does not reach the top"
              .formatted(Length.ofMm(thickness)));
    }
    Length spacing =
        answers.length(
            LIP + "nailSpacing", l.nailSpacing, () -> 150.0, new Range(10, 1000), "a hand apart");
    Optional<Length> given = l.pilotDiameter;
    Length pilot =
        answers.length(
            LIP + "pilotDiameter",
            given,
            () -> 0.7 * diameter.mm(),
            new Range(0, diameter.mm()),
            "seven tenths of the nail");
    return new Lipping.Hold.Nailed(diameter, length, spacing, pilot);
  }
}
