package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A leg.
 *
 * @param wood name of the wood
 * @param along size along the bench
 * @param across size across the bench
 */
public record Leg(String wood, Length along, Length across) {}
