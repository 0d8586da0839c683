package org.stoutwork.wood.moisture;

/**
 * Change of a size across the grain, in mm, positive when it grows. Where the ring direction is
 * known both numbers are the same.
 *
 * @param least the change of smaller amount
 * @param most the change of larger amount
 */
public record SizeChange(double least, double most) {}
