/**
 * What is known of a wood, as a list of facts and as JSON. Start at {@link
 * org.stoutwork.report.file.wood.WoodFacts}; tables for people are made of the same facts by the
 * room {@code command}. No value is worked out here but by the core rooms {@code wood} and {@code
 * wood.moisture}.
 *
 * <p>Uses {@code file.tree}, and of the core {@code quantity}, {@code source}, {@code working},
 * {@code wood} and {@code wood.moisture}.
 */
package org.stoutwork.report.file.wood;
