package org.stoutwork.analysis.element;

/**
 * The largest or smallest value of a quantity along a member.
 *
 * @param value in the unit of the quantity
 * @param at its place, mm from the start of the flexible part
 */
public record Extreme(double value, double at) {}
