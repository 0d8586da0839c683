/**
 * One way to fail with its demand, capacity and working, and the list in which a joint collects
 * them.
 *
 * <p>Start at {@link org.stoutwork.joint.limit.JointLimit}. Uses {@code joint.setting}, {@code
 * joint.glue}, {@code joint.tenon}, {@code working}.
 */
package org.stoutwork.joint.limit;
