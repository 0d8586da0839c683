package org.stoutwork.section;

/**
 * A strip of a top with holes through it, such as dog holes, bent along its length. Other than
 * {@link PiercedSection}, which looks at one section, this knows how often the section is pierced.
 *
 * @param width of the whole strip, mm, positive
 * @param taken width that the holes of one section take, mm, from 0 to below the whole
 * @param part of the strip's length along which it is pierced, 0 to 1: diameter over pitch for
 *     holes that follow one another
 */
public record PiercedStrip(double width, double taken, double part) {

  /**
   * @throws IllegalArgumentException if the width is not a positive number, the holes leave nothing
   *     of it, or the part lies outside 0 to 1
   */
  public PiercedStrip {
    if (!(width > 0) || !Double.isFinite(width)) {
      throw new IllegalArgumentException("a strip needs a positive width, not " + width + " mm");
    }
    if (!(taken >= 0 && taken < width)) {
      throw new IllegalArgumentException(
          "holes that take %s mm of a strip %s mm wide leave nothing of it; take fewer or smaller"
              .formatted(taken, width));
    }
    if (!(part >= 0 && part <= 1)) {
      throw new IllegalArgumentException(
          "holes run into each other where they take " + part + " of a length; 0 to 1 is allowed");
    }
  }

  /** Width that the holes leave, mm: above 0 and no more than the whole width. */
  public double netWidth() {
    return width - taken;
  }

  /**
   * By how much the strip is more flexible than whole, over its flexibility when whole:
   * (d/p)(B/b_net − 1); 0 or more.
   *
   * <p>Lengths at the net width and at the whole width follow one another, so that their curvatures
   * are averaged (derived). Round holes are taken as square ones, which is careful.
   */
  public double added() {
    return part * (width / netWidth() - 1);
  }

  /** Bending stiffness over that of the strip without holes: above 0 and up to 1. */
  public double stiffnessRatio() {
    return 1 / (1 + added());
  }
}
