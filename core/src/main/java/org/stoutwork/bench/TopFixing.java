package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * How the top is held down: coach screws up through the top rails, in holes that let the top move.
 *
 * @param screwDiameter of the shank
 * @param threadLength of thread in the top
 * @param holeDiameter of the holes in the rail, or the length of its slots across the bench
 * @param screw kind of screw
 * @param pilotDiameter of the hole drilled for the thread
 * @param washerDiameter of the washer, or of the head of a wood screw
 * @param perRail screws in each top rail, at least 1
 */
public record TopFixing(
    Length screwDiameter,
    Length threadLength,
    Length holeDiameter,
    FixingScrew screw,
    Length pilotDiameter,
    Length washerDiameter,
    int perRail) {}
