package org.stoutwork.analysis.solve;

/**
 * An iteration found no lasting state: contacts kept changing, or displacements kept growing.
 *
 * @param message a sentence for a person
 */
public record Unsettled(String message) implements Outcome {}
