/**
 * Glue lines: what a line carries on each grain, how it turns in its own plane, how a test mean
 * becomes a design value, and lines along laminations.
 *
 * <p>Start at {@link org.stoutwork.joint.glue.GlueLine}. Uses {@code joint.setting}, {@code
 * working}.
 */
package org.stoutwork.joint.glue;
