package org.stoutwork.section;

/** How the layers of a stack hold together. */
public sealed interface LayerBond {

  /** Glued over the whole face: the layers bend as one. */
  record Glued() implements LayerBond {}

  /** Nothing holds them: each bends alone. */
  record Loose() implements LayerBond {}

  /**
   * Screwed together; the screws slip.
   *
   * @param slipModulus K_ser of one screw, N/mm, positive
   * @param spacing along the span between screws of one row, mm, positive
   * @param rows of screws side by side, at least 1
   */
  record Screwed(double slipModulus, double spacing, int rows) implements LayerBond {

    /**
     * @throws IllegalArgumentException if a value is not positive
     */
    public Screwed {
      if (!(slipModulus > 0) || !(spacing > 0) || rows < 1) {
        throw new IllegalArgumentException(
            "screwed layers need a positive slip modulus, spacing and row count; given"
                + " %s N/mm, %s mm, %s".formatted(slipModulus, spacing, rows));
      }
    }
  }
}
