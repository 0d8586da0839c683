/**
 * Pegs through a tenon: how they give, draw and hold.
 *
 * <p>Start at {@link org.stoutwork.joint.peg.PegSpring}. Knows no tenon but by the numbers handed
 * in. Uses {@code quantity}, {@code source}, {@code working}, {@code fastener} and {@code
 * fastener.placing}.
 */
package org.stoutwork.joint.peg;
