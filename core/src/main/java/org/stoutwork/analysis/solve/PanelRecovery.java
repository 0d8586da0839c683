package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.PlateBending;
import org.stoutwork.analysis.element.PlateForces;

/** Takes deflections and stress resultants from the unknowns of a grid. */
final class PanelRecovery {
  private PanelRecovery() {}

  /** Deflections and smoothed stress resultants at the nodes. */
  static PanelField field(PanelGrid grid, PanelElements elements, double[] u) {
    PlateForces[][] middle = new PlateForces[grid.nx() - 1][grid.ny() - 1];
    for (int i = 0; i < middle.length; i++) {
      for (int j = 0; j < middle[i].length; j++) {
        if (grid.has(i, j)) {
          middle[i][j] = middle(elements, i, j, u);
        }
      }
    }
    double[][] w = new double[grid.nx()][grid.ny()];
    PlateForces[][] forces = new PlateForces[grid.nx()][grid.ny()];
    for (int i = 0; i < grid.nx(); i++) {
      for (int j = 0; j < grid.ny(); j++) {
        int node = grid.node(i, j);
        w[i][j] = node < 0 ? Double.NaN : u[3 * node];
        PlateForces sum = PlateForces.NONE;
        for (PanelStencil.Part part : PanelStencil.at(grid, i, j)) {
          sum = sum.plus(part.weight(), middle[part.i()][part.j()]);
        }
        forces[i][j] = node < 0 ? PlateForces.NONE.plus(Double.NaN, PlateForces.NONE) : sum;
      }
    }
    return new PanelField(grid, w, forces);
  }

  private static PlateForces middle(PanelElements elements, int i, int j, double[] u) {
    double[][] rows = elements.of(i, j).forces();
    int[] unknowns = elements.unknowns(i, j);
    double[] s = new double[5];
    for (int r = 0; r < 5; r++) {
      for (int c = 0; c < PlateBending.SIZE; c++) {
        s[r] += rows[r][c] * u[unknowns[c]];
      }
    }
    return new PlateForces(s[0], s[1], s[2], s[3], s[4]);
  }
}
