/**
 * Drawings of a bench and of what its checks found: views to scale, deflected shapes, diagrams of
 * internal forces.
 *
 * <p>Start at {@link org.stoutwork.report.figure.BenchViews}. Nothing is calculated here beyond
 * scales and places on paper, and nothing is known of pages. Uses {@code drawing}, {@code
 * drawing.draughting} and {@code units}, and of the core {@code quantity}, {@code bench} and {@code
 * result}.
 */
package org.stoutwork.report.figure;
