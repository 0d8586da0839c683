/**
 * Friction of wood on what it stands on or is pressed against.
 *
 * <p>Start at {@link org.stoutwork.wood.surface.Friction}. Uses {@code wood}.
 */
package org.stoutwork.wood.surface;
