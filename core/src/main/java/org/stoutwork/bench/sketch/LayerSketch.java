package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.Grain;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of one layer of the top.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class LayerSketch {

  Optional<String> wood = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<Grain> grain = Optional.empty();

  /** Sets the wood, by any name the catalogue knows. */
  public LayerSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the thickness. */
  public LayerSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets which way the grain runs. */
  public LayerSketch grain(Grain value) {
    grain = Optional.of(value);
    return this;
  }
}
