package org.stoutwork.analysis.model;

/** A load on a panel, positive against its normal: downward on a top. */
public sealed interface PanelLoad extends Load {
  /** Name of the panel it stands on. */
  String panel();

  /**
   * Even pressure on the whole panel.
   *
   * @param panel name
   * @param q N/mm²
   */
  record Pressure(String panel, double q) implements PanelLoad {
    /** Checks that it is a number. */
    public Pressure {
      Check.finite("pressure on panel '" + panel + "'", q);
    }

    @Override
    public PanelLoad times(double factor) {
      return new Pressure(panel, factor * q);
    }
  }

  /**
   * A force spread evenly over a rectangle, a line, or standing on a point.
   *
   * @param panel name
   * @param at middle of the rectangle
   * @param sizeX side along, mm; 0 for a line or point
   * @param sizeY side across, mm; 0 for a line or point
   * @param force the whole force, N
   */
  record Patch(String panel, PanelPoint at, double sizeX, double sizeY, double force)
      implements PanelLoad {
    /** Checks the ranges. */
    public Patch {
      Check.notNegative("size along of a load on panel '" + panel + "'", sizeX, "mm");
      Check.notNegative("size across of a load on panel '" + panel + "'", sizeY, "mm");
      Check.finite("force on panel '" + panel + "'", force);
    }

    @Override
    public PanelLoad times(double factor) {
      return new Patch(panel, at, sizeX, sizeY, factor * force);
    }
  }

  /**
   * An even force along a line.
   *
   * @param panel name
   * @param line where, inside the panel or on a side
   * @param q N/mm
   */
  record OnLine(String panel, PanelLine line, double q) implements PanelLoad {
    /** Checks that it is a number. */
    public OnLine {
      Check.finite("line load on panel '" + panel + "'", q);
    }

    @Override
    public PanelLoad times(double factor) {
      return new OnLine(panel, line, factor * q);
    }
  }

  /** Even pressure, N/mm². */
  static PanelLoad pressure(String panel, double q) {
    return new Pressure(panel, q);
  }

  /** A point force, N. */
  static PanelLoad point(String panel, double x, double y, double force) {
    return new Patch(panel, new PanelPoint(x, y), 0, 0, force);
  }

  /** A force spread over a rectangle with its middle at (x, y), N. */
  static PanelLoad patch(
      String panel, double x, double y, double sizeX, double sizeY, double force) {
    return new Patch(panel, new PanelPoint(x, y), sizeX, sizeY, force);
  }
}
