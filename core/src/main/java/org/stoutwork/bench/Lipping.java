package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A lipping around the top.
 *
 * @param edges that it covers
 * @param thickness away from the edge
 * @param hold how it is held
 */
public record Lipping(Edges edges, Length thickness, Hold hold) {

  /** Edges of the top. */
  public enum Edges {
    LONG("long edges"),
    ENDS("ends"),
    ALL("all round");

    private final String words;

    Edges(String words) {
      this.words = words;
    }

    /** As it is written and printed. */
    public String words() {
      return words;
    }

    /** Whether the ends of the top are covered. */
    public boolean coversEnds() {
      return this != LONG;
    }
  }

  /** How a lipping is held. */
  public sealed interface Hold {

    /** Glued over its whole face. */
    record Glued() implements Hold {}

    /**
     * Nailed.
     *
     * @param diameter of a nail
     * @param length of a nail
     * @param spacing along the edge
     * @param pilot diameter of the hole that is drilled for it; 0 for none
     */
    record Nailed(Length diameter, Length length, Length spacing, Length pilot) implements Hold {}
  }
}
