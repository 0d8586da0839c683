package org.stoutwork.section;

/**
 * A strip of a top with rows of round holes through it, such as dog holes, bent along its length.
 * Every row lies across the strip; the rows follow one another at one pitch. Other than {@link
 * PiercedSection}, which looks at one section, this knows how often the section is pierced.
 *
 * @param width of the whole strip, mm, positive
 * @param holes in one row, side by side across the width; 0 for a strip without holes
 * @param diameter of a hole, mm, positive
 * @param pitch from row to row along the strip, mm, no less than the diameter
 */
public record PiercedStrip(double width, int holes, double diameter, double pitch) {

  /**
   * @throws IllegalArgumentException if a size is not a positive number, the number of holes is
   *     negative, the holes of a row leave nothing of the width, or rows run into each other
   */
  public PiercedStrip {
    if (!isSize(width) || !isSize(diameter) || !isSize(pitch) || holes < 0) {
      throw new IllegalArgumentException(
          ("a strip with holes needs a positive width, diameter and pitch and no fewer than 0 holes"
                  + " in a row; given %s mm, %s mm, %s mm and %s")
              .formatted(width, diameter, pitch, holes));
    }
    if (holes * diameter >= width) {
      throw new IllegalArgumentException(
          "%s holes of %s mm leave nothing of a strip %s mm wide; take fewer or smaller ones"
              .formatted(holes, diameter, width));
    }
    if (pitch < diameter) {
      throw new IllegalArgumentException(
          "rows of holes of %s mm run into each other at a pitch of %s mm; allowed: %s mm or more"
              .formatted(diameter, pitch, diameter));
    }
  }

  private static boolean isSize(double value) {
    return value > 0 && Double.isFinite(value);
  }

  /** Width that a row of holes leaves, mm: B − n·d; above 0 and no more than the whole width. */
  public double netWidth() {
    return width - holes * diameter;
  }

  /**
   * Bending stiffness over that of the strip without holes: 1/(1 + (d/p)(B/b_net − 1)); above 0 and
   * up to 1.
   *
   * <p>Lengths d at the net width and p − d at the whole width follow one another, so that their
   * curvatures are averaged (derived). Round holes are taken as square ones, which is careful.
   */
  public double stiffnessRatio() {
    return 1 / (1 + diameter / pitch * (width / netWidth() - 1));
  }
}
