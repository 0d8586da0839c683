/**
 * What a joint carries and how much of it is used: one {@link org.stoutwork.joint.limit.JointLimit}
 * for each way to fail, with its working.
 *
 * <p>Front door: {@link org.stoutwork.joint.capacity.JointCapacities}. One file for each kind of
 * joint. Uses {@code joint}, {@code joint.setting}, the formula rooms of {@code joint} and {@code
 * fastener}.
 */
package org.stoutwork.joint.capacity;
