package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of a sled foot.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class FootSketch {

  Optional<String> wood = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<Length> depth = Optional.empty();
  Optional<Length> length = Optional.empty();
  Optional<Length> pad = Optional.empty();
  Optional<JointSketch> joint = Optional.empty();

  /** Sets the wood. */
  public FootSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the size along the bench. */
  public FootSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets the size up and down. */
  public FootSketch depth(Length value) {
    depth = Optional.of(value);
    return this;
  }

  /** Sets the overall length across the bench. */
  public FootSketch length(Length value) {
    length = Optional.of(value);
    return this;
  }

  /** Sets the length of the pad at each end. */
  public FootSketch pad(Length value) {
    pad = Optional.of(value);
    return this;
  }

  /** Describes the joint of each leg into it; may be called again to add to it. */
  public FootSketch joint(Consumer<JointSketch> words) {
    JointSketch part = joint.orElseGet(JointSketch::new);
    words.accept(part);
    joint = Optional.of(part);
    return this;
  }
}
