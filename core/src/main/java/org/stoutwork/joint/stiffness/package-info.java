/**
 * How stiff a joint is, as a range: low, mean and high springs with the reason for the range, for
 * every kind of joint.
 *
 * <p>Front door: {@link org.stoutwork.joint.stiffness.JointStiffness#of}. One file for each kind.
 * Nothing is said here of strength.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code
 * fastener.placing}, {@code joint}, {@code joint.setting}, {@code joint.peg}, {@code joint.bolted}
 * and {@code joint.tenon}.
 */
package org.stoutwork.joint.stiffness;
