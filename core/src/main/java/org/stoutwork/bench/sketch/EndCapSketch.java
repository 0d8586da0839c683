package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of boards across the ends of a top.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class EndCapSketch {

  Optional<Length> width = Optional.empty();
  Optional<Boolean> glued = Optional.empty();
  Optional<Length> slot = Optional.empty();

  /** Sets the width of the board along the bench. */
  public EndCapSketch width(Length value) {
    width = Optional.of(value);
    return this;
  }

  /** Sets whether it is glued over its whole length. */
  public EndCapSketch glued(boolean value) {
    glued = Optional.of(value);
    return this;
  }

  /** Sets the length of the slots beyond the diameter of their pegs. */
  public EndCapSketch slot(Length value) {
    slot = Optional.of(value);
    return this;
  }
}
