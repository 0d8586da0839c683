package org.stoutwork.analysis.solve;

/**
 * A largest or smallest value and its place.
 *
 * @param value mm for a deflection
 * @param x place along, mm
 * @param y place across, mm
 */
public record PanelExtreme(double value, double x, double y) {}
