/**
 * Pieces held together by screws: a top on its rails, a vise under a top, sheets on each other.
 *
 * <p>Start at {@link org.stoutwork.joint.screwed.Screwing}. Knows no bench: thicknesses, spacings
 * and forces are handed in.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code
 * fastener.lateral}, {@code fastener.placing}, {@code fastener.withdrawal}, {@code joint.setting}
 * and {@code joint.limit}.
 */
package org.stoutwork.joint.screwed;
