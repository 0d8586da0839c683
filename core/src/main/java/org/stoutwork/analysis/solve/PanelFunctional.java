package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.PlateBending;
import org.stoutwork.analysis.element.PlateShape;

/** A figure at one place of a panel as a sum of the unknowns w, θx, θy of its grid. */
final class PanelFunctional {
  private PanelFunctional() {}

  /**
   * The factors of all unknowns, three a node; with the same numbers the forces whose displacements
   * show the influence of loads on the figure.
   *
   * @throws IllegalArgumentException for a place off the panel or within an opening
   */
  static double[] of(
      PanelGrid grid, PanelElements elements, PanelQuantity quantity, double x, double y) {
    if (!grid.panel().hasMaterial(x, y)) {
      throw new IllegalArgumentException(
          "panel '" + grid.panel().name() + "' has nothing at (" + x + ", " + y + ")");
    }
    double[] factors = new double[3 * grid.nodes()];
    int i = grid.column(x);
    int j = grid.row(y);
    double s = (x - grid.x(i)) / (grid.x(i + 1) - grid.x(i));
    double t = (y - grid.y(j)) / (grid.y(j + 1) - grid.y(j));
    double[] shape = PlateShape.at(PanelField.snap(s), PanelField.snap(t));
    for (int n = 0; n < 4; n++) {
      if (shape[n] != 0) {
        int ni = i + (n == 1 || n == 2 ? 1 : 0);
        int nj = j + n / 2;
        if (quantity == PanelQuantity.W) {
          factors[3 * grid.node(ni, nj)] += shape[n];
        } else {
          addForce(grid, elements, quantity.row(), ni, nj, shape[n], factors);
        }
      }
    }
    return factors;
  }

  private static void addForce(
      PanelGrid grid,
      PanelElements elements,
      int row,
      int i,
      int j,
      double part,
      double[] factors) {
    for (PanelStencil.Part p : PanelStencil.at(grid, i, j)) {
      double[] values = elements.of(p.i(), p.j()).forces()[row];
      int[] unknowns = elements.unknowns(p.i(), p.j());
      for (int c = 0; c < PlateBending.SIZE; c++) {
        factors[unknowns[c]] += part * p.weight() * values[c];
      }
    }
  }
}
