package org.stoutwork.bench;

import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * A leg.
 *
 * @param wood name of the wood
 * @param along size along the bench
 * @param across size across the bench
 * @param lamination how it is built up, if it is
 */
public record Leg(String wood, Length along, Length across, Optional<Lamination> lamination) {}
