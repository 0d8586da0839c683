/**
 * Water in wood: the moisture content that air brings about, strength and density at a moisture
 * content, and the movement between two moisture contents.
 *
 * <p>Start at {@link org.stoutwork.wood.moisture.ClearMeans} for values, {@link
 * org.stoutwork.wood.moisture.EquilibriumMoisture} for air, {@link
 * org.stoutwork.wood.moisture.Movement} for size. Moisture contents are in percent of the ovendry
 * mass throughout. Temperature plays no part but in the equilibrium with air. Uses {@code
 * quantity}, {@code source}, {@code table}, {@code working}, {@code wood} and {@code wood.time}.
 */
package org.stoutwork.wood.moisture;
