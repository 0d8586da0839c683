package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of one end frame, or of all of them.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class EndFrameSketch {

  Optional<String> name = Optional.empty();
  Optional<Length> at = Optional.empty();
  Optional<LegSketch> legs = Optional.empty();
  Optional<RailSketch> topRail = Optional.empty();
  Optional<RailSketch> bottomRail = Optional.empty();
  Optional<Boolean> withoutBottomRail = Optional.empty();
  Optional<FootSketch> foot = Optional.empty();

  /** Sets the name. */
  public EndFrameSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets the distance of the leg centres from the left end of the top. */
  public EndFrameSketch at(Length value) {
    at = Optional.of(value);
    return this;
  }

  /** Describes both legs; may be called again to add to it. */
  public EndFrameSketch legs(Consumer<LegSketch> words) {
    LegSketch part = legs.orElseGet(LegSketch::new);
    words.accept(part);
    legs = Optional.of(part);
    return this;
  }

  /** Describes the rail under the top; may be called again to add to it. */
  public EndFrameSketch topRail(Consumer<RailSketch> words) {
    RailSketch part = topRail.orElseGet(RailSketch::new);
    words.accept(part);
    topRail = Optional.of(part);
    return this;
  }

  /** Describes the rail near the floor; may be called again to add to it. */
  public EndFrameSketch bottomRail(Consumer<RailSketch> words) {
    RailSketch part = bottomRail.orElseGet(RailSketch::new);
    words.accept(part);
    bottomRail = Optional.of(part);
    return this;
  }

  /** Sets whether there is no bottom rail. */
  public EndFrameSketch withoutBottomRail(boolean value) {
    withoutBottomRail = Optional.of(value);
    return this;
  }

  /** Describes a sled foot under the legs; may be called again to add to it. */
  public EndFrameSketch foot(Consumer<FootSketch> words) {
    FootSketch part = foot.orElseGet(FootSketch::new);
    words.accept(part);
    foot = Optional.of(part);
    return this;
  }
}
