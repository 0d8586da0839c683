package org.stoutwork.fastener;

/**
 * The wood of a peg, mean values along its grain.
 *
 * @param name of the wood
 * @param modulus of elasticity along the grain, MPa
 * @param bendingStrength mean, MPa
 * @param specificGravity oven-dry
 * @param density mean at use, kg/m³
 */
public record PegWood(
    String name, double modulus, double bendingStrength, double specificGravity, double density) {

  /** Checks that every value is above nought. */
  public PegWood {
    if (!(modulus > 0 && bendingStrength > 0 && specificGravity > 0 && density > 0)) {
      throw new IllegalArgumentException(
          "peg wood \"%s\" needs modulus, strength, gravity and density above 0; they were %s, %s, %s, %s"
              .formatted(name, modulus, bendingStrength, specificGravity, density));
    }
  }
}
