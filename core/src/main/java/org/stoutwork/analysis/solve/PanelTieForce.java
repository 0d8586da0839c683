package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.PanelTie;

/**
 * What one direction of a tie does to the panel.
 *
 * @param tie the tie
 * @param direction global direction
 * @param force by the frame's node on the panel, N or N mm
 * @param open true for a one-way link that has opened
 */
public record PanelTieForce(PanelTie tie, Direction direction, double force, boolean open) {}
