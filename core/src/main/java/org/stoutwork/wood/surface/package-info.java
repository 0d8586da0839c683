/**
 * Friction of wood on what it stands on or is pressed against, and woods that glue poorly.
 *
 * <p>Start at {@link org.stoutwork.wood.surface.Friction} and {@link
 * org.stoutwork.wood.surface.Gluing}. Knows no loads and no bench. Uses {@code source}, {@code
 * table} and {@code wood}.
 */
package org.stoutwork.wood.surface;
