package org.stoutwork.check;

import org.stoutwork.action.Action;
import org.stoutwork.analysis.model.LoadCase;

/**
 * An action where it stands.
 *
 * @param action that stands there
 * @param unit load case of one newton in its place
 * @param force N; negative for the opposite direction
 * @param words for the sheet
 */
public record Stand(Action action, LoadCase unit, double force, String words) {}
