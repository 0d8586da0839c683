/**
 * What every check is handed and what it hands back: the analyses of one bench at low, mean and
 * high stiffness of its joints, the places where actions stand, and the strengths of its woods.
 *
 * <p>Start at {@link org.stoutwork.check.Inquiry}. The checks themselves stand in the rooms below,
 * grouped by what they look at, one file for each. This room knows no limit and passes no verdict
 * of its own.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time},
 * {@code wood.moisture}, {@code wood.design}, {@code analysis.model}, {@code analysis.solve},
 * {@code bench}, {@code action}, {@code result} and {@code assembly}.
 */
package org.stoutwork.check;
