/**
 * What makers do: proportions of joints as rows of data, each a soft check marked common practice,
 * and default geometry for joints of which little was said.
 *
 * <p>Start at {@link org.stoutwork.joint.advice.Advice}. Nothing here is a verdict: what makers do
 * is not a limit. Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code
 * fastener.placing}, {@code joint}, {@code joint.setting}, {@code joint.bolted}, {@code
 * joint.tenon} and {@code joint.stiffness}.
 */
package org.stoutwork.joint.advice;
