package org.stoutwork.bench;

import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * The top.
 *
 * @param length along the bench
 * @param width across it
 * @param layers from the lowest to the uppermost, at least one
 * @param hold how the layers are held together; says nothing where there is one
 * @param fixing how it is held down on the top rails
 * @param endCap boards across its ends, if any
 * @param lipping around it, if any
 * @param dogHoles rows of holes for dogs
 */
public record Top(
    Length length,
    Length width,
    List<TopLayer> layers,
    LayerHold hold,
    TopFixing fixing,
    Optional<EndCap> endCap,
    Optional<Lipping> lipping,
    List<DogHoles> dogHoles) {

  /** Keeps its own copies. */
  public Top {
    layers = List.copyOf(layers);
    dogHoles = List.copyOf(dogHoles);
  }

  /** With other holes for its screws. */
  public Top with(TopFixing other) {
    return new Top(length, width, layers, hold, other, endCap, lipping, dogHoles);
  }

  /** Whole thickness, mm. */
  public double thicknessMm() {
    return layers.stream().mapToDouble(layer -> layer.thickness().mm()).sum();
  }
}
