/**
 * The units that a reader chose, and how amounts are written in them.
 *
 * <p>Start at {@link org.stoutwork.report.units.Amounts}. No bench, no drawing and no page may be
 * known here. Uses of the core {@code quantity}.
 */
package org.stoutwork.report.units;
