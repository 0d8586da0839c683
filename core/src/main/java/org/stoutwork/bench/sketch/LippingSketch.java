package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.Lipping;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of a lipping.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class LippingSketch {

  Optional<Lipping.Edges> edges = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<Boolean> nailed = Optional.empty();
  Optional<Length> nailDiameter = Optional.empty();
  Optional<Length> nailLength = Optional.empty();
  Optional<Length> nailSpacing = Optional.empty();
  Optional<Length> pilotDiameter = Optional.empty();

  /** Sets which edges it covers. */
  public LippingSketch edges(Lipping.Edges value) {
    edges = Optional.of(value);
    return this;
  }

  /** Sets its thickness away from the edge. */
  public LippingSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets whether it is nailed; else it is glued. */
  public LippingSketch nailed(boolean value) {
    nailed = Optional.of(value);
    return this;
  }

  /** Sets the diameter of a nail. */
  public LippingSketch nailDiameter(Length value) {
    nailDiameter = Optional.of(value);
    return this;
  }

  /** Sets the length of a nail. */
  public LippingSketch nailLength(Length value) {
    nailLength = Optional.of(value);
    return this;
  }

  /** Sets the distance of the nails. */
  public LippingSketch nailSpacing(Length value) {
    nailSpacing = Optional.of(value);
    return this;
  }

  /** Sets the diameter of the hole drilled for a nail; 0 for none. */
  public LippingSketch pilotDiameter(Length value) {
    pilotDiameter = Optional.of(value);
    return this;
  }
}
