/**
 * Sets formulas: fractions over bars, roots, raised and lowered signs, all as real text and lines.
 * Takes the tree of a core formula, so that what is printed is what was calculated.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.math.FormulaSetter}. Knows no pages and calculates
 * nothing. Uses {@code drawing}, and of the core {@code quantity} and {@code working}.
 */
package org.stoutwork.report.sheet.math;
