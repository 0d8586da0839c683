package org.stoutwork.analysis.model;

/**
 * A place on a panel.
 *
 * @param x distance along, from the origin corner, mm
 * @param y distance across, mm
 */
public record PanelPoint(double x, double y) {
  /** Checks that both are numbers. */
  public PanelPoint {
    Check.finite("x of a place on a panel", x);
    Check.finite("y of a place on a panel", y);
  }
}
