package org.stoutwork.report.file.frame;

/** A load on a panel, positive against its normal: downward on a top. */
public sealed interface PanelLoad {

  /** The panel's name. */
  String panel();

  /**
   * An even pressure on the whole panel.
   *
   * @param panel the panel's name
   * @param q MPa
   */
  record Pressure(String panel, double q) implements PanelLoad {}

  /**
   * A force spread evenly on a rectangle.
   *
   * @param panel the panel's name
   * @param at centre of the rectangle
   * @param sizeAlong extent along x, mm; 0 for a point
   * @param sizeAcross extent along y, mm; 0 for a point
   * @param force N
   */
  record Patch(String panel, PanelEntry.Point at, double sizeAlong, double sizeAcross, double force)
      implements PanelLoad {}
}
