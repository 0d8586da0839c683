package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A piece glued on to deepen the end of a stretcher at its joint.
 *
 * @param depth of the stretcher with the piece, up and down
 * @param length of the piece along the stretcher
 * @param edge of the stretcher that it is glued to
 */
public record EndExtension(Length depth, Length length, GluedEdge edge) {}
