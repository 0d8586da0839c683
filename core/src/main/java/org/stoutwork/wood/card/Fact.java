package org.stoutwork.wood.card;

import org.stoutwork.wood.Property;

/**
 * One fact about a wood.
 *
 * @param key stable short name in lowerCamelCase, for files: such as {@code bendingDry}
 * @param words what it is, for people
 * @param symbol as printed; may be empty
 * @param property value, unit and source
 */
public record Fact(String key, String words, String symbol, Property property) {}
