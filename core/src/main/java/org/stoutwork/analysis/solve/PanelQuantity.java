package org.stoutwork.analysis.solve;

/** What may be asked at one place of a panel. */
public enum PanelQuantity {
  /** Deflection along the normal, mm. */
  W(-1),
  /** Moment by stresses along x, N mm/mm. */
  MX(0),
  /** Moment by stresses along y, N mm/mm. */
  MY(1),
  /** Twisting moment, N mm/mm. */
  MXY(2),
  /** Shear force on faces x = const, N/mm. */
  QX(3),
  /** Shear force on faces y = const, N/mm. */
  QY(4);

  private final int row;

  PanelQuantity(int row) {
    this.row = row;
  }

  /** Place among the stress resultants Mx, My, Mxy, Qx, Qy; -1 for the deflection. */
  int row() {
    return row;
  }
}
