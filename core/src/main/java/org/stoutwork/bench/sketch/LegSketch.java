package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.Grain;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of the legs of an end frame.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class LegSketch {

  Optional<String> wood = Optional.empty();
  Optional<Length> along = Optional.empty();
  Optional<Length> across = Optional.empty();
  Optional<Length> frontInset = Optional.empty();
  Optional<Length> backInset = Optional.empty();
  Optional<Integer> laminations = Optional.empty();
  Optional<Grain> laminated = Optional.empty();

  /** Sets the wood. */
  public LegSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the size along the bench. */
  public LegSketch along(Length value) {
    along = Optional.of(value);
    return this;
  }

  /** Sets the size across the bench. */
  public LegSketch across(Length value) {
    across = Optional.of(value);
    return this;
  }

  /** Sets the distance from the front edge of the top to the outer face of the front leg. */
  public LegSketch frontInset(Length value) {
    frontInset = Optional.of(value);
    return this;
  }

  /** Sets the same at the back. */
  public LegSketch backInset(Length value) {
    backInset = Optional.of(value);
    return this;
  }

  /** Sets of how many pieces a leg is glued up. */
  public LegSketch laminations(int value) {
    laminations = Optional.of(value);
    return this;
  }

  /** Sets whether these are stacked along the bench or across it. */
  public LegSketch laminated(Grain value) {
    laminated = Optional.of(value);
    return this;
  }
}
