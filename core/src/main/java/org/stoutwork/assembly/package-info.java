/**
 * Turns a bench into a frame model and remembers which member is which part. Here, and nowhere
 * lower, the wood tower and the mechanics tower meet.
 *
 * <p>Start at {@link org.stoutwork.assembly.BenchModel}, whose top is a grillage, and {@link
 * org.stoutwork.assembly.PlatedModel}, whose top is a plate. Axes: X along the bench, Y from the
 * front edge to the back edge, Z up, origin on the floor under the front left corner of the top.
 * Nothing is judged here: no limits, no verdicts.
 *
 * <p>Uses {@code quantity}, {@code working}, {@code wood}, {@code wood.time}, {@code
 * wood.moisture}, {@code wood.direction}, {@code wood.grade}, {@code wood.design}, {@code section},
 * {@code analysis.model}, {@code fastener}, {@code joint}, {@code joint.setting}, {@code
 * joint.stiffness} and {@code bench}.
 */
package org.stoutwork.assembly;
