package org.stoutwork.assembly;

import org.stoutwork.section.Rectangle;

/**
 * One member of the model that is a length of a part.
 *
 * @param member its name in the model
 * @param from distance of its start from the start of the part, mm
 * @param section b across (local y), h up (local z)
 */
public record Piece(String member, double from, Rectangle section) {}
