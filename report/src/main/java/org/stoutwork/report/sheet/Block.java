package org.stoutwork.report.sheet;

import java.util.List;
import java.util.Locale;

/** One thing in the flow of a sheet. */
public sealed interface Block
    permits Block.PageBreak,
        Block.Spacer,
        Block.Together,
        Bars,
        Bullets,
        Caution,
        Figures,
        Heading,
        Paragraph,
        SignOff,
        Table,
        Worked {

  /** What follows begins on a new page. */
  record PageBreak() implements Block {}

  /**
   * Empty height; vanishes at the head of a page.
   *
   * @param height mm
   */
  record Spacer(double height) implements Block {

    /**
     * @throws IllegalArgumentException if the height is not within 0 to 100 mm
     */
    public Spacer {
      if (!(height >= 0 && height <= 100)) {
        throw new IllegalArgumentException(
            String.format(Locale.ROOT, "a spacer is 0 to 100 mm high; %s mm was given", height));
      }
    }
  }

  /**
   * Blocks that stay on one page, if one page can hold them.
   *
   * @param blocks in order
   */
  record Together(List<Block> blocks) implements Block {

    /** Keeps its own copy. */
    public Together {
      blocks = List.copyOf(blocks);
    }

    /** The given blocks, kept together. */
    public static Together of(Block... blocks) {
      return new Together(List.of(blocks));
    }
  }
}
