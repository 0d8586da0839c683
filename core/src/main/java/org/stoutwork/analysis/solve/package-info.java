/**
 * Puts elements together and solves: linear static analysis with one-way contact, second order,
 * buckling, natural frequencies, influence lines, and the self-check of each.
 *
 * <p>Knows frames, not wood. Uses {@code analysis.model}, {@code analysis.element} and {@code
 * linear}. Start reading at {@link org.stoutwork.analysis.solve.FrameSolver}; the equations, which
 * any element may join, are in {@link org.stoutwork.analysis.solve.GlobalSystem}. For many variants
 * of one frame: {@link org.stoutwork.analysis.solve.SpringSweep} (joints), {@link
 * org.stoutwork.analysis.solve.SectionSweep} (one section), {@link
 * org.stoutwork.analysis.solve.StiffnessSweep} (everything).
 */
package org.stoutwork.analysis.solve;
