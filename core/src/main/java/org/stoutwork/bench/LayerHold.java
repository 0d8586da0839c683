package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * How one piece is held on another over its length: the layers of a top, or a stretcher under it.
 */
public sealed interface LayerHold {

  /** In words, for the sheet. */
  String words();

  /** Glued over the whole face. */
  record Glued() implements LayerHold {
    @Override
    public String words() {
      return "glued";
    }
  }

  /** Only lies on it. */
  record Loose() implements LayerHold {
    @Override
    public String words() {
      return "loose";
    }
  }

  /**
   * Screwed on.
   *
   * @param diameter of a screw
   * @param spacing of the screws of one row
   * @param rows side by side, at least 1
   */
  record Screwed(Length diameter, Length spacing, int rows) implements LayerHold {
    @Override
    public String words() {
      return "screwed, %s rows at %s, screws %s".formatted(rows, spacing, diameter);
    }
  }
}
