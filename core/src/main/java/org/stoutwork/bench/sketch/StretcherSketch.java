package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of a stretcher. Its height is given by one of its edges or its centre.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class StretcherSketch {

  Optional<String> name = Optional.empty();
  Optional<StretcherLine> line = Optional.empty();
  Optional<String> wood = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<Length> depth = Optional.empty();
  Optional<Length> topEdgeAt = Optional.empty();
  Optional<Length> bottomEdgeAt = Optional.empty();
  Optional<Length> centreAt = Optional.empty();
  Optional<Length> endDepth = Optional.empty();
  Optional<Length> endLength = Optional.empty();
  Optional<GluedEdge> endPiece = Optional.empty();
  Optional<LayerHold> hold = Optional.empty();
  Optional<JointSketch> joint = Optional.empty();

  /** Sets the name. */
  public StretcherSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets which line it follows. */
  public StretcherSketch line(StretcherLine value) {
    line = Optional.of(value);
    return this;
  }

  /** Sets the wood. */
  public StretcherSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the size across the bench. */
  public StretcherSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets the size up and down. */
  public StretcherSketch depth(Length value) {
    depth = Optional.of(value);
    return this;
  }

  /** Sets the height of its top edge above the floor. */
  public StretcherSketch topEdgeAt(Length value) {
    topEdgeAt = Optional.of(value);
    return this;
  }

  /** Sets the height of its bottom edge above the floor. */
  public StretcherSketch bottomEdgeAt(Length value) {
    bottomEdgeAt = Optional.of(value);
    return this;
  }

  /** Sets the height of its middle above the floor. */
  public StretcherSketch centreAt(Length value) {
    centreAt = Optional.of(value);
    return this;
  }

  /** Sets the depth at its ends with a piece glued on. */
  public StretcherSketch endDepth(Length value) {
    endDepth = Optional.of(value);
    return this;
  }

  /** Sets the length of that piece. */
  public StretcherSketch endLength(Length value) {
    endLength = Optional.of(value);
    return this;
  }

  /** Sets which edge that piece is glued to. */
  public StretcherSketch endPiece(GluedEdge value) {
    endPiece = Optional.of(value);
    return this;
  }

  /** Sets how it is held to the top, where it touches it. */
  public StretcherSketch hold(LayerHold value) {
    hold = Optional.of(value);
    return this;
  }

  /** Describes the joint at each end; may be called again to add to it. */
  public StretcherSketch joint(Consumer<JointSketch> words) {
    JointSketch part = joint.orElseGet(JointSketch::new);
    words.accept(part);
    joint = Optional.of(part);
    return this;
  }
}
