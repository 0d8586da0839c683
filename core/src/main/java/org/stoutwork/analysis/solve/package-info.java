/**
 * Puts elements together and solves: linear static analysis with one-way contact, second order,
 * buckling, natural frequencies, influence lines, and the self-check of each.
 *
 * <p>Knows frames, not wood. Start reading at {@link org.stoutwork.analysis.solve.FrameSolver}; the
 * equations, which any element may join, are in {@link org.stoutwork.analysis.solve.GlobalSystem}.
 * Uses {@code linear}, {@code analysis.model} and {@code analysis.element}.
 */
package org.stoutwork.analysis.solve;
