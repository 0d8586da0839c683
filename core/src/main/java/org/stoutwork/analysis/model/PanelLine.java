package org.stoutwork.analysis.model;

/**
 * A straight line on a panel, parallel to one of its sides.
 *
 * @param across true for a line x = at (it runs across the panel), false for y = at
 * @param at the fixed coordinate, mm
 * @param from where it starts, in the other coordinate, mm
 * @param to where it ends; infinite means the far side of the panel
 */
public record PanelLine(boolean across, double at, double from, double to) {
  /** Checks the order of the ends. */
  public PanelLine {
    Check.notNegative("place of a line on a panel", at, "mm");
    Check.notNegative("start of a line on a panel", from, "mm");
    if (!(to > from)) {
      throw new IllegalArgumentException(
          "a line on a panel must end behind its start at " + from + " mm, not at " + to + " mm");
    }
  }

  /** The whole line x = {@code at}. */
  public static PanelLine x(double at) {
    return new PanelLine(true, at, 0, Double.POSITIVE_INFINITY);
  }

  /** The whole line y = {@code at}. */
  public static PanelLine y(double at) {
    return new PanelLine(false, at, 0, Double.POSITIVE_INFINITY);
  }

  /** Only the part between two places. */
  public PanelLine between(double start, double end) {
    return new PanelLine(across, at, start, end);
  }

  /** In words, as {@code x = 245 mm}. */
  public String inWords() {
    String part = from > 0 || !Double.isInfinite(to) ? " from " + from + " to " + to : "";
    return (across ? "x = " : "y = ") + at + part + " mm";
  }
}
