package org.stoutwork.section;

/**
 * What a mortise or a hole takes out of a rectangle.
 *
 * @param width measured along b, mm, not negative
 * @param depth measured along h, mm, not negative
 * @param offset of the opening's centre from the rectangle's, along h, mm
 */
public record Opening(double width, double depth, double offset) {

  /** Nothing is taken out. */
  public static final Opening NONE = new Opening(0, 0, 0);

  /**
   * @throws IllegalArgumentException if a size is negative or not a number
   */
  public Opening {
    if (!(width >= 0) || !(depth >= 0) || !Double.isFinite(offset)) {
      throw new IllegalArgumentException(
          "an opening needs sizes of 0 mm or more; given %s mm × %s mm, offset %s mm"
              .formatted(width, depth, offset));
    }
  }
}
