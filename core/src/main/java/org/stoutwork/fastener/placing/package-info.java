/**
 * Where fasteners sit and how far they give: slip moduli, groups in rotation, distances to ends,
 * edges and neighbours, how a row shares its force, slots for the movement of wood.
 *
 * <p>Start at {@link org.stoutwork.fastener.placing.Slip}. Nothing is said here of strength. Uses
 * {@code quantity}, {@code source}, {@code working} and {@code fastener}.
 */
package org.stoutwork.fastener.placing;
