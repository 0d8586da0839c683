/**
 * How single pieces scatter about the mean of their wood: coefficients of variation, the value that
 * all but 5 % exceed, and lognormal distributions with their correlation for later studies.
 *
 * <p>Start at {@link org.stoutwork.wood.scatter.Variability}. Draws no random numbers. Uses {@code
 * quantity}, {@code source}, {@code table}, {@code working} and {@code wood}.
 */
package org.stoutwork.wood.scatter;
