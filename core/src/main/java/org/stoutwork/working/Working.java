package org.stoutwork.working;

import java.util.List;
import java.util.Optional;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;

/**
 * A calculation as it was done, line by line.
 *
 * @param lines in the order of the calculation
 */
public record Working(List<Line> lines) {

  /** A working without lines: nobody asked for it. */
  public static final Working NONE = new Working(List.of());

  /** Keeps its own copy of the lines. */
  public Working {
    lines = List.copyOf(lines);
  }

  /** The value of the last line that calculated something, if any. */
  public Optional<Double> result() {
    return lines.stream()
        .filter(Line.Calculated.class::isInstance)
        .map(line -> ((Line.Calculated) line).value())
        .reduce((first, second) -> second);
  }

  /** Every source that the lines rest on, once each, in order. */
  public List<Source> sources() {
    return lines.stream().flatMap(line -> sourceOf(line).stream()).distinct().toList();
  }

  /** The least firm mark among the sources; derived if there are none. */
  public Mark weakestMark() {
    return sources().stream().map(Source::mark).reduce(Mark.DERIVED, Mark::weaker);
  }

  private static Optional<Source> sourceOf(Line line) {
    if (line instanceof Line.Given given) {
      return Optional.of(given.source());
    }
    return line instanceof Line.Calculated calculated
        ? Optional.of(calculated.formula().source())
        : Optional.empty();
  }
}
