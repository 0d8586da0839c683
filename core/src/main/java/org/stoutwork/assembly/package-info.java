/**
 * Turns a bench into a frame model and remembers which member is which part. Here, and nowhere
 * lower, the wood tower and the mechanics tower meet.
 *
 * <p>Start at {@link org.stoutwork.assembly.BenchModel}. Axes: X along the bench, Y from the front
 * edge to the back edge, Z up, origin on the floor under the front left corner of the top. Nothing
 * is judged here: no limits, no verdicts. Uses {@code bench}, {@code joint}, {@code fastener},
 * {@code section}, {@code wood}, {@code action} and {@code analysis.model}.
 */
package org.stoutwork.assembly;
