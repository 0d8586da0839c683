package org.stoutwork.report.drawing;

/** Whether a run stands on the base line or is a smaller index below or above it. */
public enum Level {
  BASE(1, 0),
  SUB(0.72, -0.17),
  SUPER(0.72, 0.34);

  private final double size;
  private final double rise;

  Level(double size, double rise) {
    this.size = size;
    this.rise = rise;
  }

  /** Size relative to the text it belongs to. */
  public double size() {
    return size;
  }

  /** Height of its base line above that of the text, in parts of the text's size. */
  public double rise() {
    return rise;
  }
}
