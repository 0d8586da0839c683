package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of the top.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class TopSketch {

  Optional<Length> length = Optional.empty();
  Optional<Length> width = Optional.empty();
  Optional<Length> thickness = Optional.empty();
  Optional<String> wood = Optional.empty();
  Optional<Grain> grain = Optional.empty();
  final List<LayerSketch> layers = new ArrayList<>();
  Optional<LayerHold> hold = Optional.empty();
  Optional<FixingSketch> fixing = Optional.empty();
  Optional<EndCapSketch> endCap = Optional.empty();
  Optional<LippingSketch> lipping = Optional.empty();
  final List<DogHolesSketch> dogHoles = new ArrayList<>();

  /** Sets the length along the bench. */
  public TopSketch length(Length value) {
    length = Optional.of(value);
    return this;
  }

  /** Sets the width across it. */
  public TopSketch width(Length value) {
    width = Optional.of(value);
    return this;
  }

  /** Sets the thickness of a top of one layer. */
  public TopSketch thickness(Length value) {
    thickness = Optional.of(value);
    return this;
  }

  /** Sets the wood of a top of one layer. */
  public TopSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets which way the grain of a top of one layer runs. */
  public TopSketch grain(Grain value) {
    grain = Optional.of(value);
    return this;
  }

  /** Adds a layer, the lowest first. */
  public TopSketch layer(Consumer<LayerSketch> words) {
    LayerSketch next = new LayerSketch();
    words.accept(next);
    layers.add(next);
    return this;
  }

  /** Sets how the layers are held together. */
  public TopSketch hold(LayerHold value) {
    hold = Optional.of(value);
    return this;
  }

  /** Describes the screws that hold the top down; may be called again to add to it. */
  public TopSketch fixing(Consumer<FixingSketch> words) {
    FixingSketch part = fixing.orElseGet(FixingSketch::new);
    words.accept(part);
    fixing = Optional.of(part);
    return this;
  }

  /** Describes boards across the ends; may be called again to add to it. */
  public TopSketch endCap(Consumer<EndCapSketch> words) {
    EndCapSketch part = endCap.orElseGet(EndCapSketch::new);
    words.accept(part);
    endCap = Optional.of(part);
    return this;
  }

  /** Adds a row of dog holes. */
  public TopSketch dogHoles(Consumer<DogHolesSketch> words) {
    DogHolesSketch next = new DogHolesSketch();
    words.accept(next);
    dogHoles.add(next);
    return this;
  }

  /** Describes a lipping; may be called again to add to it. */
  public TopSketch lipping(Consumer<LippingSketch> words) {
    LippingSketch part = lipping.orElseGet(LippingSketch::new);
    words.accept(part);
    lipping = Optional.of(part);
    return this;
  }
}
