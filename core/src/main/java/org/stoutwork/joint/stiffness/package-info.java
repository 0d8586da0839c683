/**
 * How stiff a joint is, as a range: low, mean and high springs with the reason for the range, for
 * every kind of joint.
 *
 * <p>Front door: {@link org.stoutwork.joint.stiffness.JointStiffness#of}. One file for each kind.
 * Uses {@code joint}, {@code joint.setting} and the formula rooms of {@code joint} and {@code
 * fastener}.
 */
package org.stoutwork.joint.stiffness;
