package org.stoutwork.bench;

import org.stoutwork.quantity.Force;
import org.stoutwork.wood.time.DurationClass;

/**
 * An action that the maker states; it takes the place of the one that the duty sets.
 *
 * @param kind of action
 * @param name as the sheet prints it
 * @param force characteristic
 * @param duration all in all
 */
public record StatedAction(ActionKind kind, String name, Force force, DurationClass duration) {}
