package org.stoutwork.bench;

import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.moisture.MoistureRange;

/**
 * The air in which the bench stands and the moisture that follows.
 *
 * @param climate of the room
 * @param atAssembly moisture content of the wood when the bench was put together, %
 * @param range between which it will live, %
 */
public record Air(Climate climate, double atAssembly, MoistureRange range) {}
