/**
 * Where a number comes from: a document, the place in it, and how far that place was checked.
 *
 * <p>Knows nothing of values, units or wood. Every formula and every table row elsewhere carries a
 * {@link org.stoutwork.source.Source}. Start at {@link org.stoutwork.source.Source}. Uses no other
 * room.
 */
package org.stoutwork.source;
