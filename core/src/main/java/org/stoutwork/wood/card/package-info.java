/**
 * Everything that is known of one wood, as a list for people: each fact with unit and source.
 *
 * <p>Start at {@link org.stoutwork.wood.card.WoodCard}. Nothing is calculated here that other rooms
 * do not calculate. Uses {@code quantity}, {@code source}, {@code working}, {@code wood} and {@code
 * wood.moisture}.
 */
package org.stoutwork.wood.card;
