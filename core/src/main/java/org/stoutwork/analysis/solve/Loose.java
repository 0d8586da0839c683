package org.stoutwork.analysis.solve;

/**
 * The structure, or a part of it, can move without resistance, or lifts off as a whole; there is no
 * equilibrium to report.
 *
 * @param part the node or member that moves most
 * @param direction how it moves, in words: {@code along x}, {@code about z}
 * @param message a sentence for a person, with the remedy
 */
public record Loose(String part, String direction, String message)
    implements Preparation, Outcome {}
