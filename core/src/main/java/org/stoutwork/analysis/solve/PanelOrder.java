package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * The order in which the unknowns of a grid are eliminated: the grid is cut in half across its
 * longer side again and again, and each cut is eliminated after both halves (A. George, "Nested
 * dissection of a regular finite element mesh", SIAM J. Numer. Anal. 10, 1973).
 */
final class PanelOrder {
  private final PanelGrid grid;
  private final List<Integer> nodes = new ArrayList<>();

  private PanelOrder(PanelGrid grid) {
    this.grid = grid;
  }

  /** The nodes in the order of elimination. */
  static int[] of(PanelGrid grid) {
    PanelOrder order = new PanelOrder(grid);
    order.cut(0, grid.nx(), 0, grid.ny());
    return order.nodes.stream().mapToInt(Integer::intValue).toArray();
  }

  private void cut(int i0, int i1, int j0, int j1) {
    if (i1 <= i0 || j1 <= j0) {
      return;
    }
    if ((i1 - i0) * (j1 - j0) <= 6 || Math.min(i1 - i0, j1 - j0) <= 1) {
      all(i0, i1, j0, j1);
    } else if (i1 - i0 >= j1 - j0) {
      int middle = (i0 + i1) / 2;
      cut(i0, middle, j0, j1);
      cut(middle + 1, i1, j0, j1);
      all(middle, middle + 1, j0, j1);
    } else {
      int middle = (j0 + j1) / 2;
      cut(i0, i1, j0, middle);
      cut(i0, i1, middle + 1, j1);
      all(i0, i1, middle, middle + 1);
    }
  }

  private void all(int i0, int i1, int j0, int j1) {
    for (int i = i0; i < i1; i++) {
      for (int j = j0; j < j1; j++) {
        if (grid.node(i, j) >= 0) {
          nodes.add(grid.node(i, j));
        }
      }
    }
  }
}
