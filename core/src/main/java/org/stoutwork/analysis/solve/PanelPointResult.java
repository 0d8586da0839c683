package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.PlateForces;

/**
 * What happens at one place of a panel.
 *
 * @param x place along, mm
 * @param y place across, mm
 * @param w deflection along the normal, mm (down is negative on a top)
 * @param forces moments and shear forces per unit of width
 */
public record PanelPointResult(double x, double y, double w, PlateForces forces) {}
