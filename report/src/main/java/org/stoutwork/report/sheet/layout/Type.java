package org.stoutwork.report.sheet.layout;

import org.stoutwork.report.drawing.TextMeasure;

/**
 * A size of type with its line height.
 *
 * @param points size
 * @param leading distance of base lines, mm
 */
record Type(double points, double leading) {

  static final Type BODY = of(10.5, 14);
  static final Type NOTE = of(10, 12.8);
  static final Type TABLE = of(10, 12.8);
  static final Type DENSE = of(9, 11.5);
  static final Type RUNNING = of(9, 11.5);
  static final Type LEAD = of(12.5, 16.5);
  static final Type TITLE = of(24, 28);
  static final Type H1 = of(16, 20);
  static final Type H2 = of(13, 16.5);
  static final Type H3 = of(11, 14.5);

  /** Smallest type in a figure, points. */
  static final double LEAST_IN_FIGURES = 8;

  private static Type of(double points, double leadingPoints) {
    return new Type(points, leadingPoints * TextMeasure.MM_PER_POINT);
  }

  /** Height of one em, mm. */
  double em() {
    return points * TextMeasure.MM_PER_POINT;
  }

  /** Distance from the top of a line's strip to its base line, mm. */
  double baseline() {
    double ink = (TextMeasure.ASCENT + TextMeasure.DESCENT) * em();
    return (leading - ink) / 2 + TextMeasure.ASCENT * em();
  }
}
