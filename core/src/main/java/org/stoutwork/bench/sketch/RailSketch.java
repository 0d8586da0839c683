package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.bench.Seat;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of a rail of an end frame. Its height is given by one of its edges or its
 * centre.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class RailSketch {

  Optional<String> wood = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<Length> depth = Optional.empty();
  Optional<Length> topEdgeAt = Optional.empty();
  Optional<Length> bottomEdgeAt = Optional.empty();
  Optional<Length> centreAt = Optional.empty();
  Optional<Seat> seat = Optional.empty();
  Optional<Length> length = Optional.empty();
  Optional<Length> proud = Optional.empty();
  Optional<JointSketch> joint = Optional.empty();

  /** Sets the wood. */
  public RailSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the size along the bench. */
  public RailSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets the size up and down. */
  public RailSketch depth(Length value) {
    depth = Optional.of(value);
    return this;
  }

  /** Sets the height of its top edge above the floor. */
  public RailSketch topEdgeAt(Length value) {
    topEdgeAt = Optional.of(value);
    return this;
  }

  /** Sets the height of its bottom edge above the floor. */
  public RailSketch bottomEdgeAt(Length value) {
    bottomEdgeAt = Optional.of(value);
    return this;
  }

  /** Sets the height of its middle above the floor. */
  public RailSketch centreAt(Length value) {
    centreAt = Optional.of(value);
    return this;
  }

  /** Sets how it meets the legs. */
  public RailSketch seat(Seat value) {
    seat = Optional.of(value);
    return this;
  }

  /** Sets the overall length of a rail over the legs. */
  public RailSketch length(Length value) {
    length = Optional.of(value);
    return this;
  }

  /** Describes the joint at each end; may be called again to add to it. */
  public RailSketch joint(Consumer<JointSketch> words) {
    JointSketch part = joint.orElseGet(JointSketch::new);
    words.accept(part);
    joint = Optional.of(part);
    return this;
  }

  /** Sets how far the rail is left proud of the end of the legs. */
  public RailSketch proud(Length value) {
    proud = Optional.of(value);
    return this;
  }
}
