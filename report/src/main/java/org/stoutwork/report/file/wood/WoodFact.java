package org.stoutwork.report.file.wood;

import org.stoutwork.wood.Property;

/**
 * One number about a wood.
 *
 * @param key in JSON, lowerCamelCase; the unit of a key is the same for every wood
 * @param meaning in words
 * @param state in which it holds: green, dry, at a moisture content; empty where it has none
 * @param property the number with its unit and source
 */
public record WoodFact(String key, String meaning, String state, Property property) {}
