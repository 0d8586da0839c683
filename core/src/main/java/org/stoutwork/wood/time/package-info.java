/**
 * Time under load: duration classes, service classes, the factors k_mod, k_def and C_D, and the
 * class of loads that come again and again.
 *
 * <p>Start at {@link org.stoutwork.wood.time.LoadDuration} for a load, {@link
 * org.stoutwork.wood.time.TimeFactors} for the factors. Knows products, not species. Uses {@code
 * quantity}, {@code source}, {@code table} and {@code wood}.
 */
package org.stoutwork.wood.time;
