package org.stoutwork.report.drawing;

/** Which part of a line of text stands at its place. */
public enum Align {
  LEFT(0),
  CENTRE(0.5),
  RIGHT(1);

  private final double part;

  Align(double part) {
    this.part = part;
  }

  /** Part of the width that lies left of the place. */
  public double part() {
    return part;
  }
}
