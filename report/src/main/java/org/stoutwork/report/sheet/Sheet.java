package org.stoutwork.report.sheet;

import java.util.List;
import java.util.Objects;

/**
 * A sheet: what it says, before it is set on pages.
 *
 * @param about what the file says about itself
 * @param setup paper and margins
 * @param furniture running head and foot
 * @param blocks in reading order
 */
public record Sheet(About about, PageSetup setup, Furniture furniture, List<Block> blocks) {

  /** Keeps its own copy of the blocks. */
  public Sheet {
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(furniture, "furniture");
    blocks = List.copyOf(blocks);
  }
}
