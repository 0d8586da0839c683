package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of a row of dog holes.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class DogHolesSketch {

  Optional<DogHoles.Shape> shape = Optional.empty();
  Optional<Length> size = Optional.empty();
  Optional<Length> spacing = Optional.empty();
  Optional<Length> fromFront = Optional.empty();
  Optional<Length> fromLeft = Optional.empty();
  Optional<Integer> count = Optional.empty();
  Optional<Force> clampForce = Optional.empty();

  /** Sets whether the holes are round or square. */
  public DogHolesSketch shape(DogHoles.Shape value) {
    shape = Optional.of(value);
    return this;
  }

  /** Sets the diameter, or the side of a square hole. */
  public DogHolesSketch size(Length value) {
    size = Optional.of(value);
    return this;
  }

  /** Sets the distance from middle to middle. */
  public DogHolesSketch spacing(Length value) {
    spacing = Optional.of(value);
    return this;
  }

  /** Sets the middle line of the row, from the front edge. */
  public DogHolesSketch fromFront(Length value) {
    fromFront = Optional.of(value);
    return this;
  }

  /** Sets the middle of the first hole, from the left end. */
  public DogHolesSketch fromLeft(Length value) {
    fromLeft = Optional.of(value);
    return this;
  }

  /** Sets how many holes there are. */
  public DogHolesSketch count(int value) {
    count = Optional.of(value);
    return this;
  }

  /** Sets the most with which work is meant to be pressed between dogs. */
  public DogHolesSketch clampForce(Force value) {
    clampForce = Optional.of(value);
    return this;
  }
}
