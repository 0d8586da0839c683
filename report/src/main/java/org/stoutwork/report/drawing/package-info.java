/**
 * Paper space: lines, polygons, arcs, hatching and lettering in millimetres on paper, as records
 * without behaviour of any output format. The origin of a drawing is its upper left corner; x runs
 * right, y runs down; angles are degrees, counter-clockwise as seen on the paper.
 *
 * <p>Start at {@link org.stoutwork.report.drawing.Sketch} to make a {@link
 * org.stoutwork.report.drawing.Drawing}, and at {@link org.stoutwork.report.drawing.Markup} for
 * lettering. No bench, no result and no PDF may be known here. Uses no other room.
 */
package org.stoutwork.report.drawing;
