/**
 * Friction of wood on what it stands on or is pressed against.
 *
 * <p>Start at {@link org.stoutwork.wood.surface.Friction}. Knows no loads and no bench. Uses {@code
 * source}, {@code table} and {@code wood}.
 */
package org.stoutwork.wood.surface;
