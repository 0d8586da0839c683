package org.stoutwork.report.sheet;

import java.util.Locale;
import org.stoutwork.report.drawing.Bounds;

/**
 * Paper and margins. Nothing is printed in the margins; running head and foot lie inside them.
 *
 * @param paper sheet of paper
 * @param left margin, mm, at least 15
 * @param right margin, mm, at least 15; wide enough for a checker's flags
 * @param top margin, mm, at least 15
 * @param bottom margin, mm, at least 15
 */
public record PageSetup(Paper paper, double left, double right, double top, double bottom) {

  /** Height kept for the running head with the space below it, mm. */
  public static final double HEAD = 15;

  /** Height kept for the running foot with the space above it, mm. */
  public static final double FOOT = 10;

  private static final double GUTTER = 6;
  private static final double LEAST = 15;

  /**
   * @throws IllegalArgumentException if a margin is below 15 mm or less than 100 mm is left between
   */
  public PageSetup {
    double smallest = Math.min(Math.min(left, right), Math.min(top, bottom));
    if (!(smallest >= LEAST)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "margins are at least 15 mm; the smallest given is %s mm", smallest));
    }
    if (paper.width() - left - right < 100 || paper.height() - top - bottom < 120) {
      throw new IllegalArgumentException(
          "margins leave less than 100 mm by 120 mm to print on; make them narrower");
    }
  }

  /** The usual margins: 20 mm for the binding, 24 mm for a checker's flags. */
  public static PageSetup usual(Paper paper) {
    return new PageSetup(paper, 20, 24, 15, 15);
  }

  /** Width of the column of text, mm. */
  public double columnWidth() {
    return paper.width() - left - right;
  }

  /** Width of one of two figures side by side, mm. */
  public double halfColumnWidth() {
    return (columnWidth() - GUTTER) / 2;
  }

  /** Height of the column of text, mm. */
  public double columnHeight() {
    return column().height();
  }

  /** Everything that may be printed on. */
  public Bounds printable() {
    return new Bounds(left, top, paper.width() - right, paper.height() - bottom);
  }

  /** Where the flow goes. */
  public Bounds column() {
    Bounds all = printable();
    return new Bounds(all.left(), all.top() + HEAD, all.right(), all.bottom() - FOOT);
  }
}
