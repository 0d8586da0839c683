package org.stoutwork.result;

import org.stoutwork.quantity.Measure;
import org.stoutwork.source.Source;

/**
 * One action as the sheet lists it.
 *
 * @param name of it
 * @param size of it
 * @param direction and place, in words
 * @param duration class, in words
 * @param source of the figure
 */
public record ActionLine(
    String name, Measure size, String direction, String duration, Source source) {}
