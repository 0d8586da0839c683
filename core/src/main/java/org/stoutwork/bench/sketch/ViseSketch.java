package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.Edge;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;

/**
 * What a maker says of a vise.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class ViseSketch {

  Optional<String> name = Optional.empty();
  Optional<Edge> edge = Optional.empty();
  Optional<Length> at = Optional.empty();
  Optional<Mass> mass = Optional.empty();
  Optional<Length> outreach = Optional.empty();
  Optional<Length> jawWidth = Optional.empty();
  Optional<Force> clampForce = Optional.empty();

  /** Sets the name. */
  public ViseSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets the edge of the top on which it is fixed. */
  public ViseSketch edge(Edge value) {
    edge = Optional.of(value);
    return this;
  }

  /** Sets its place along that edge. */
  public ViseSketch at(Length value) {
    at = Optional.of(value);
    return this;
  }

  /** Sets the mass with its cheeks. */
  public ViseSketch mass(Mass value) {
    mass = Optional.of(value);
    return this;
  }

  /** Sets how far the jaw stands out. */
  public ViseSketch outreach(Length value) {
    outreach = Optional.of(value);
    return this;
  }

  /** Sets the width of the jaw along the edge. */
  public ViseSketch jawWidth(Length value) {
    jawWidth = Optional.of(value);
    return this;
  }

  /** Sets the most that it is meant to press. */
  public ViseSketch clampForce(Force value) {
    clampForce = Optional.of(value);
    return this;
  }
}
