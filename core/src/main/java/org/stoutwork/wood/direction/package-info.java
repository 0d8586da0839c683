/**
 * Stiffness along and across the grain for plates and bearings, and strength at an angle to the
 * grain.
 *
 * <p>Start at {@link org.stoutwork.wood.direction.WoodStiffness}. L is along the grain, R across
 * the growth rings, T along them. Knows no duration and no members. Uses {@code quantity}, {@code
 * source}, {@code working}, {@code wood} and {@code wood.moisture}.
 */
package org.stoutwork.wood.direction;
