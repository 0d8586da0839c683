/**
 * What is known of woods: species with their clear-wood means, strength classes, sheet goods, and
 * the unit, value and source of every number.
 *
 * <p>Start at {@link org.stoutwork.wood.Wood}; woods are found through {@code
 * wood.catalogue.WoodCatalogue}. What water, time, scatter, direction and growth do to a value
 * stands in the rooms below this one ({@code wood.moisture}, {@code wood.time}, {@code
 * wood.scatter}, {@code wood.direction}, {@code wood.grade}); {@code wood.design} puts them
 * together into design values. The tables stand beside this package as text.
 *
 * <p>Stresses and moduli are in MPa, densities in kg/m³, lengths in mm. No benches, joints or
 * analysis here. Uses {@code quantity} and {@code source}.
 */
package org.stoutwork.wood;
