package org.stoutwork.result;

import org.stoutwork.action.Way;

/**
 * How the bench racks one way.
 *
 * @param way along or across
 * @param force of the thrust, N
 * @param stiffness thrust over sway at the top, N/mm
 * @param sway under the thrust, mm, second order included
 * @param amplification of the sway by the weight that leans with it
 */
public record Racking(
    Way way,
    double force,
    StiffnessRange stiffness,
    StiffnessRange sway,
    StiffnessRange amplification) {}
