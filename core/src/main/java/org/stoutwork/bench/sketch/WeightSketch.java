package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;
import org.stoutwork.wood.time.CumulativeLoad;

/**
 * What a maker says of something heavy that stays on the bench.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class WeightSketch {

  Optional<String> name = Optional.empty();
  Optional<WeightKind> kind = Optional.empty();
  Optional<Mass> mass = Optional.empty();
  Optional<Length> x = Optional.empty();
  Optional<Length> y = Optional.empty();
  Optional<Length> centreAbove = Optional.empty();
  Optional<Length> baseAlong = Optional.empty();
  Optional<Length> baseAcross = Optional.empty();
  Optional<Boolean> reciprocating = Optional.empty();
  Optional<CumulativeLoad> stays = Optional.empty();
  final List<Double> ratesHz = new ArrayList<>();

  /** Sets what it is. */
  public WeightSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets where it lies. */
  public WeightSketch kind(WeightKind value) {
    kind = Optional.of(value);
    return this;
  }

  /** Sets the mass. */
  public WeightSketch mass(Mass value) {
    mass = Optional.of(value);
    return this;
  }

  /** Sets the distance from the left end of the top. */
  public WeightSketch x(Length value) {
    x = Optional.of(value);
    return this;
  }

  /** Sets the distance from the front edge of the top. */
  public WeightSketch y(Length value) {
    y = Optional.of(value);
    return this;
  }

  /** Sets the height of its centre of gravity above the top. */
  public WeightSketch centreAbove(Length value) {
    centreAbove = Optional.of(value);
    return this;
  }

  /** Sets the distance of its feet along the bench. */
  public WeightSketch baseAlong(Length value) {
    baseAlong = Optional.of(value);
    return this;
  }

  /** Sets the distance of its feet across the bench. */
  public WeightSketch baseAcross(Length value) {
    baseAcross = Optional.of(value);
    return this;
  }

  /** Sets whether it moves to and fro. */
  public WeightSketch reciprocating(boolean value) {
    reciprocating = Optional.of(value);
    return this;
  }

  /** Sets how long it lies on the bench, all in all, where it is not fixed. */
  public WeightSketch stays(CumulativeLoad value) {
    stays = Optional.of(value);
    return this;
  }

  /** Adds a rate at which a shaft turns, in turns per second. */
  public WeightSketch rateHz(double value) {
    ratesHz.add(value);
    return this;
  }
}
