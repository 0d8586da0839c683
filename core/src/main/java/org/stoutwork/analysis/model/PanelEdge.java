package org.stoutwork.analysis.model;

/** The four sides of a panel. */
public enum PanelEdge {
  /** The side x = 0. */
  LEFT,
  /** The side x = length. */
  RIGHT,
  /** The side y = 0. */
  FRONT,
  /** The side y = width. */
  BACK;

  /** The line of this side on a panel of the given size, mm. */
  public PanelLine line(double length, double width) {
    return switch (this) {
      case LEFT -> PanelLine.x(0);
      case RIGHT -> PanelLine.x(length);
      case FRONT -> PanelLine.y(0);
      case BACK -> PanelLine.y(width);
    };
  }
}
