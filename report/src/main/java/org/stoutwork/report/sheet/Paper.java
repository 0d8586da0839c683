package org.stoutwork.report.sheet;

/** Sheets of paper, upright. */
public enum Paper {
  A4(210, 297),
  /** US Letter, 8 1/2 in by 11 in. */
  LETTER(215.9, 279.4);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Width, mm. */
  public double width() {
    return width;
  }

  /** Height, mm. */
  public double height() {
    return height;
  }
}
