package org.stoutwork.fastener;

/**
 * A round washer.
 *
 * @param outer diameter, mm
 * @param hole diameter of the hole in the wood under it, mm
 * @param thickness mm
 */
public record Washer(double outer, double hole, double thickness) {

  /** Checks that the washer is wider than the hole it covers. */
  public Washer {
    if (!(hole >= 0 && outer > hole && thickness > 0)) {
      throw new IllegalArgumentException(
          "a washer of %s mm does not cover a hole of %s mm (thickness %s mm): take a wider one"
              .formatted(outer, hole, thickness));
    }
  }
}
