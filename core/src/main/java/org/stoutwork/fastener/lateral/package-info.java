/**
 * Fasteners loaded across their shank: how the wood bears under them, and the modes in which wood
 * and fastener yield, by EN 1995-1-1 and by the NDS, in single and double shear.
 *
 * <p>Start at {@link org.stoutwork.fastener.lateral.Johansen} or {@link
 * org.stoutwork.fastener.lateral.NdsYield}; both return {@link
 * org.stoutwork.fastener.lateral.YieldModes}. Knows no joints: how fasteners stand together is not
 * seen here. Uses {@code quantity}, {@code source}, {@code working} and {@code fastener}.
 */
package org.stoutwork.fastener.lateral;
