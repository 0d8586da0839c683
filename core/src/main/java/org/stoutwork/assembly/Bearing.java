package org.stoutwork.assembly;

/**
 * A place where a rail or a stretcher carries the top.
 *
 * @param node on the axis of the rail or stretcher
 * @param line of the top's grid above it
 * @param station of the top's grid above it
 * @param alongX resistance of the hold to sliding along the bench, N/mm; infinite where glued
 * @param acrossY resistance to sliding across the bench, N/mm
 * @param upward resistance of the hold to the top's lifting, N/mm; infinite where glued, 0 where
 *     nothing holds
 */
record Bearing(String node, int line, int station, double alongX, double acrossY, double upward) {}
