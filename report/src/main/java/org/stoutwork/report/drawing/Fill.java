package org.stoutwork.report.drawing;

import java.util.Locale;

/** What fills a closed shape. */
public sealed interface Fill {

  /** Nothing: the shape is an outline. */
  Fill NONE = new Empty();

  /** A fill of one ink. */
  static Fill of(Ink ink) {
    return new Plain(ink);
  }

  /** Hatching at an angle. */
  static Fill hatch(double degrees, double spacing) {
    return new Hatch(degrees, spacing, Stroke.THIN);
  }

  /** No fill. */
  record Empty() implements Fill {}

  /**
   * One even ink.
   *
   * @param ink which
   */
  record Plain(Ink ink) implements Fill {}

  /**
   * Parallel lines.
   *
   * @param degrees direction of the lines, counter-clockwise from right
   * @param spacing distance between lines, mm, at least 0.3
   * @param stroke of the lines
   */
  record Hatch(double degrees, double spacing, Stroke stroke) implements Fill {

    /**
     * @throws IllegalArgumentException if the lines are closer than 0.3 mm, which prints as grey
     */
    public Hatch {
      if (!(spacing >= 0.3) || !Double.isFinite(degrees)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "hatching needs a spacing of at least 0.3 mm; %s mm was given",
                spacing));
      }
    }
  }
}
