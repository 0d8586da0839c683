/**
 * Pegs through a tenon: how they give, draw and hold.
 *
 * <p>Start at {@link org.stoutwork.joint.peg.PegSpring}. Uses {@code fastener} and its rooms,
 * {@code working}.
 */
package org.stoutwork.joint.peg;
