/**
 * What a joint carries and how much of it is used: one {@link org.stoutwork.joint.limit.JointLimit}
 * for each way to fail, with its working.
 *
 * <p>Front door: {@link org.stoutwork.joint.capacity.JointCapacities}. One file for each kind of
 * joint. Forces are handed in; nothing is known of where they come from.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code
 * fastener.lateral}, {@code fastener.placing}, {@code fastener.withdrawal}, {@code joint}, {@code
 * joint.setting}, {@code joint.glue}, {@code joint.peg}, {@code joint.regression}, {@code
 * joint.bolted}, {@code joint.tenon}, {@code joint.limit} and {@code joint.screwed}.
 */
package org.stoutwork.joint.capacity;
