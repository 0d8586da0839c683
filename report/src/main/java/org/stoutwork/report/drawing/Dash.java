package org.stoutwork.report.drawing;

import java.util.List;

/** Line patterns; lengths in multiples of the line width. */
public enum Dash {
  SOLID(),
  /** Hidden edges, undeflected outlines. */
  DASHED(8, 5),
  DOTTED(1.5, 4),
  /** Centre lines and axes. */
  CHAIN(16, 4, 2.5, 4);

  private final List<Double> pattern;

  Dash(double... pattern) {
    this.pattern = java.util.Arrays.stream(pattern).boxed().toList();
  }

  /** On and off lengths, mm, for a line of the given width; empty for a solid line. */
  public List<Double> lengths(double widthMm) {
    double unit = Math.max(widthMm, 0.15);
    return pattern.stream().map(part -> part * unit).toList();
  }
}
