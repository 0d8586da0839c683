package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * One layer of the top, boards glued edge to edge or a sheet.
 *
 * @param wood name of the wood, as the catalogue knows it
 * @param thickness of the layer
 * @param grain direction of the boards, or of the sheet's stronger way
 */
public record TopLayer(String wood, Length thickness, Grain grain) {}
