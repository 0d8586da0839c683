package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.PlateForces;
import org.stoutwork.analysis.element.PlateShape;

/**
 * Deflection and stress resultants over a whole panel, at the nodes of a rectangular grid. Places
 * inside openings hold {@link Double#NaN}.
 */
public final class PanelField {
  private final PanelGrid grid;
  private final double[][] w;
  private final PlateForces[][] forces;

  PanelField(PanelGrid grid, double[][] w, PlateForces[][] forces) {
    this.grid = grid;
    this.w = w;
    this.forces = forces;
  }

  /** Number of grid lines along. */
  public int countX() {
    return grid.nx();
  }

  /** Number of grid lines across. */
  public int countY() {
    return grid.ny();
  }

  /** Place of a grid line, mm. */
  public double x(int i) {
    return grid.x(i);
  }

  /** Place of a grid line, mm. */
  public double y(int j) {
    return grid.y(j);
  }

  /** Deflection along the normal at a node, mm. */
  public double w(int i, int j) {
    return w[i][j];
  }

  /** Stress resultants at a node. */
  public PlateForces forces(int i, int j) {
    return forces[i][j];
  }

  /** Deflection at any place, mm. */
  public double wAt(double x, double y) {
    Spot s = spot(x, y);
    double sum = 0;
    for (int n = 0; n < 4; n++) {
      if (s.shape[n] != 0) {
        sum += s.shape[n] * w[s.i + (n == 1 || n == 2 ? 1 : 0)][s.j + n / 2];
      }
    }
    return sum;
  }

  /** Stress resultants at any place. */
  public PlateForces forcesAt(double x, double y) {
    Spot s = spot(x, y);
    PlateForces sum = PlateForces.NONE;
    for (int n = 0; n < 4; n++) {
      if (s.shape[n] != 0) {
        sum = sum.plus(s.shape[n], forces[s.i + (n == 1 || n == 2 ? 1 : 0)][s.j + n / 2]);
      }
    }
    return sum;
  }

  private static final class Spot {
    private final int i;
    private final int j;
    private final double[] shape;

    Spot(int i, int j, double[] shape) {
      this.i = i;
      this.j = j;
      this.shape = shape;
    }
  }

  private Spot spot(double x, double y) {
    int i = grid.column(x);
    int j = grid.row(y);
    double s = (x - grid.x(i)) / (grid.x(i + 1) - grid.x(i));
    double t = (y - grid.y(j)) / (grid.y(j + 1) - grid.y(j));
    return new Spot(i, j, PlateShape.at(snap(s), snap(t)));
  }

  static double snap(double part) {
    return Math.abs(part) < 1e-9 ? 0 : Math.abs(part - 1) < 1e-9 ? 1 : part;
  }

  PanelGrid grid() {
    return grid;
  }
}
