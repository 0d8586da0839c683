/**
 * Glue lines: what a line carries on each grain, how it turns in its own plane, how a test mean
 * becomes a design value, and lines along laminations.
 *
 * <p>Start at {@link org.stoutwork.joint.glue.GlueLine}. Knows no joint as a whole: areas and
 * forces are handed in. Uses {@code quantity}, {@code source}, {@code working} and {@code
 * joint.setting}.
 */
package org.stoutwork.joint.glue;
