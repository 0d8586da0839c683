package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.model.Vec3;

/**
 * A force and a moment at a place, global axes: one entry of the equilibrium check.
 *
 * @param at mm
 * @param force N
 * @param moment N mm, about {@code at}
 */
public record Applied(Vec3 at, Vec3 force, Vec3 moment) {}
