package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A board across both ends of a solid top, tongued and grooved to it.
 *
 * @param width of the board, along the bench
 * @param glued whether it is glued over its whole length; else in the middle only, with pegs in
 *     slots towards the edges
 * @param slot length of the slots beyond the diameter of their pegs, to both sides together
 */
public record EndCap(Length width, boolean glued, Length slot) {}
