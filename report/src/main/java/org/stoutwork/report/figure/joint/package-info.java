/**
 * Drawings of the joints of a bench, each to scale with its dimensions: a section through the joint
 * and a cut at its shoulder; and of end caps, lippings and deepened ends.
 *
 * <p>Start at {@link org.stoutwork.report.figure.joint.JointUses}, which finds the joints of a
 * bench, then read {@link org.stoutwork.report.figure.joint.JointDrawing}. Nothing is known here of
 * pages, and nothing is calculated beyond places on paper. Uses {@code drawing}, {@code
 * drawing.draughting} and {@code units}, and of the core {@code quantity}, {@code fastener}, {@code
 * joint} and {@code bench}.
 */
package org.stoutwork.report.figure.joint;
