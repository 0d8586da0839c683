/**
 * What makers do: proportions of joints as rows of data, each a soft check marked common practice,
 * and default geometry for joints of which little was said.
 *
 * <p>Start at {@link org.stoutwork.joint.advice.Advice}. Uses {@code joint}, {@code joint.setting},
 * {@code joint.stiffness} for the measured effect.
 */
package org.stoutwork.joint.advice;
