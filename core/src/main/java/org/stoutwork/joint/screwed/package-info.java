/**
 * Pieces held together by screws or nails: a top on its rails, sheets on each other, a lipping.
 *
 * <p>Start at {@link org.stoutwork.joint.screwed.Fastening}: one fastener through two pieces. A row
 * of them carries {@link org.stoutwork.joint.screwed.RowForces} and sits in a {@link
 * org.stoutwork.joint.screwed.Seat} of each piece. Knows no bench: thicknesses, spacings and forces
 * are handed in.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code
 * fastener.lateral}, {@code fastener.placing}, {@code fastener.withdrawal}, {@code joint.setting}
 * and {@code joint.limit}.
 */
package org.stoutwork.joint.screwed;
