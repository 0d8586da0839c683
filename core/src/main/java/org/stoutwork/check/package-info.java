/**
 * What every check is handed and what it hands back: the analyses of one bench at low, mean and
 * high stiffness of its joints, the places where actions stand, and the strengths of its woods.
 *
 * <p>Start at {@link org.stoutwork.check.Inquiry}. The checks themselves stand in the rooms below,
 * grouped by what they look at, one file for each. Uses {@code bench}, {@code action}, {@code
 * assembly}, {@code result}, the wood and the mechanics towers.
 */
package org.stoutwork.check;
