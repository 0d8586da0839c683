package org.stoutwork.working;

import org.stoutwork.quantity.Unit;

/**
 * One symbol of a formula.
 *
 * @param symbol as printed, with an optional index after a low line
 * @param meaning in words
 * @param unit of the values it stands for
 */
public record Symbol(String symbol, String meaning, Unit unit) {}
