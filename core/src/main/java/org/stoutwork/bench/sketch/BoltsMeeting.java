package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.quantity.Length;

/**
 * Refuses bolts that would meet another bolt or a peg of another piece in a leg. Bolts that come
 * into a middle leg from both bays on one axis belong to one stretcher and are one rod.
 */
final class BoltsMeeting {

  /** Wood that must stay between two bores, so that no drill runs into the other; mm. */
  private static final double LEAST_BETWEEN = 5;

  private final Answers answers;

  BoltsMeeting(Answers answers) {
    this.answers = answers;
  }

  void check(List<EndFrame> frames, List<Stretcher> stretchers) {
    for (int i = 0; i < frames.size(); i++) {
      for (StretcherLine side : List.of(StretcherLine.FRONT, StretcherLine.BACK)) {
        Optional<BenchFault> fault = meeting(i, frames.get(i), stretchers, side);
        if (fault.isPresent()) {
          answers.fault(fault.get());
          return;
        }
      }
    }
  }

  private static Optional<BenchFault> meeting(
      int i, EndFrame frame, List<Stretcher> stretchers, StretcherLine side) {
    List<LegBore> bores = LegBore.of(frame, stretchers, side);
    for (LegBore own : bores) {
      for (LegBore other : bores.subList(0, bores.indexOf(own))) {
        double least = (own.diameter() + other.diameter()) / 2 + LEAST_BETWEEN;
        boolean counts = (own.bolt() || other.bolt()) && !own.by().equals(other.by());
        if (counts && own.apart(other) < least) {
          return Optional.of(fault(key(own.by(), i, stretchers), frame, own, other, least));
        }
      }
    }
    return Optional.empty();
  }

  private static String key(String by, int frame, List<Stretcher> stretchers) {
    return IntStream.range(0, stretchers.size())
        .filter(k -> stretchers.get(k).name().equals(by))
        .mapToObj("stretchers[%s]"::formatted)
        .findFirst()
        .orElse("endFrames[%s].bottomRail".formatted(frame));
  }

  private static BenchFault fault(
      String key, EndFrame frame, LegBore own, LegBore other, double least) {
    boolean bothBolts = own.bolt() && other.bolt();
    return BenchFault.of(
        key,
        "such that a %s of the %s at %s and %s of the %s at %s meet in a leg of the %s end frame: their middles are %s apart"
            .formatted(
                own.words(),
                own.by(),
                Length.ofMm(own.height()),
                bothBolts ? "one" : "a " + other.words(),
                other.by(),
                Length.ofMm(other.height()),
                frame.name(),
                Length.ofMm(own.apart(other))),
        "at least %s apart, bores of %s and %s with %s of wood between: move one piece up or down by %s, or %s"
            .formatted(
                Length.ofMm(least),
                Length.ofMm(own.diameter()),
                Length.ofMm(other.diameter()),
                Length.ofMm(LEAST_BETWEEN),
                Length.ofMm(own.toMove(other, least)),
                bothBolts
                    ? "change the spacing of its bolts"
                    : "change the spacing of its bolts or the place of its pegs"));
  }
}
