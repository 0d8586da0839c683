/**
 * One way to fail with its demand, capacity and working, and the list in which a joint collects
 * them.
 *
 * <p>Start at {@link org.stoutwork.joint.limit.JointLimit}. Where demands come from is not known
 * here.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code fastener}, {@code joint},
 * {@code joint.setting}, {@code joint.glue} and {@code joint.tenon}.
 */
package org.stoutwork.joint.limit;
