package org.stoutwork.bench;

import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;

/**
 * A vise.
 *
 * @param name in words
 * @param edge of the top on which it is fixed
 * @param at distance of its middle along that edge: from the left end of the top on a long edge,
 *     from the front on a short one
 * @param mass with its cheeks
 * @param outreach of its jaw beyond the edge of the top, where someone may sit
 * @param jawWidth of the jaw along the edge
 * @param clampForce the most that it is meant to press
 */
public record Vise(
    String name,
    Edge edge,
    Length at,
    Mass mass,
    Length outreach,
    Length jawWidth,
    Force clampForce) {}
