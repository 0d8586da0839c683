/**
 * Pieces held together by screws: a top on its rails, a vise under a top, sheets on each other.
 *
 * <p>Start at {@link org.stoutwork.joint.screwed.Screwing}. Uses {@code fastener} and its rooms,
 * {@code joint.limit}, {@code joint.setting}.
 */
package org.stoutwork.joint.screwed;
