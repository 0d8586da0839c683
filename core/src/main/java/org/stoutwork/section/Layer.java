package org.stoutwork.section;

/**
 * One layer of a stack.
 *
 * @param thickness mm, positive
 * @param modulus E in the direction of bending, MPa, positive
 */
public record Layer(double thickness, double modulus) {

  /**
   * @throws IllegalArgumentException if a value is not positive
   */
  public Layer {
    if (!(thickness > 0) || !(modulus > 0)) {
      throw new IllegalArgumentException(
          "a layer needs a positive thickness and modulus; given %s mm and %s MPa"
              .formatted(thickness, modulus));
    }
  }
}
