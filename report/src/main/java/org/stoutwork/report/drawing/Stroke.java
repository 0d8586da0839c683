package org.stoutwork.report.drawing;

import java.util.Locale;

/**
 * How a line is drawn.
 *
 * @param width millimetres, 0.05 to 3
 * @param ink its ink
 * @param dash its pattern
 */
public record Stroke(double width, Ink ink, Dash dash) {

  /** Rules between rows, extension lines. */
  public static final Stroke HAIR = of(0.13, Ink.BLACK);

  /** Dimension lines, leaders, secondary edges. */
  public static final Stroke THIN = of(0.18, Ink.BLACK);

  /** Visible edges. */
  public static final Stroke MEDIUM = of(0.3, Ink.BLACK);

  /** Outlines, results, loads. */
  public static final Stroke THICK = of(0.5, Ink.BLACK);

  /**
   * @throws IllegalArgumentException if the width is outside 0.05 to 3 mm
   */
  public Stroke {
    if (!(width >= 0.05 && width <= 3)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "a line is 0.05 mm to 3 mm wide; %s mm was given", width));
    }
  }

  /** A solid line. */
  public static Stroke of(double width, Ink ink) {
    return new Stroke(width, ink, Dash.SOLID);
  }

  /** The same line in another pattern. */
  public Stroke dashed(Dash pattern) {
    return new Stroke(width, ink, pattern);
  }

  /** The same line in another ink. */
  public Stroke in(Ink other) {
    return new Stroke(width, other, dash);
  }
}
