package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A rail across the bench, from the front leg of an end frame to its back leg.
 *
 * @param wood name of the wood
 * @param thickness along the bench
 * @param depth up and down
 * @param centreAt height of its middle above the floor
 * @param seat how it meets the legs
 * @param length overall, where it lies over the legs; the clear distance between them elsewhere
 * @param proud how far its upper edge stands above the end of the legs; 0 where they are flush
 * @param joint at each end
 */
public record Rail(
    String wood,
    Length thickness,
    Length depth,
    Length centreAt,
    Seat seat,
    Length length,
    Length proud,
    BenchJoint joint) {}
