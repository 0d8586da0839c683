/**
 * Where fasteners sit and how far they give: slip moduli, groups in rotation, distances to ends and
 * edges, slots for the movement of wood.
 *
 * <p>Start at {@link org.stoutwork.fastener.placing.Slip}. Uses {@code fastener}, {@code working}.
 */
package org.stoutwork.fastener.placing;
