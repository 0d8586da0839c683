/**
 * What a draughtsman adds to a drawing: dimension lines, leaders, load arrows, scale bars, view
 * titles, and the scale of a view. Each kind makes marks and nothing else; none knows what is
 * drawn.
 *
 * <p>Start at {@link org.stoutwork.report.drawing.draughting.View}, which puts real lengths on
 * paper, then {@link org.stoutwork.report.drawing.draughting.Dimensions}. Uses {@code drawing}.
 */
package org.stoutwork.report.drawing.draughting;
