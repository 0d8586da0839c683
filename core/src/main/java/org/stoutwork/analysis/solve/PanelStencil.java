package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * How the forces at a node follow from those at the middles of the cells around it, where they are
 * most accurate. From each of up to four sides they are extended linearly through the next cells of
 * the same section; the mean of the sides is taken. In the spirit of O. C. Zienkiewicz and J. Z.
 * Zhu, "The superconvergent patch recovery and a posteriori error estimates", IJNME 33 (1992).
 */
final class PanelStencil {
  /** Part of one cell. */
  record Part(int i, int j, double weight) {}

  private PanelStencil() {}

  /** The parts of the cells at node (i, j); they sum to one. */
  static List<Part> at(PanelGrid grid, int i, int j) {
    List<List<Part>> sides = new ArrayList<>();
    for (int sx = -1; sx <= 0; sx++) {
      for (int sy = -1; sy <= 0; sy++) {
        if (grid.has(i + sx, j + sy)) {
          sides.add(side(grid, i, j, sx, sy));
        }
      }
    }
    List<Part> all = new ArrayList<>();
    for (List<Part> side : sides) {
      for (Part p : side) {
        all.add(new Part(p.i(), p.j(), p.weight() / sides.size()));
      }
    }
    return all;
  }

  private static List<Part> side(PanelGrid grid, int i, int j, int sx, int sy) {
    int ci = i + sx;
    int cj = j + sy;
    int ni = ci + (sx < 0 ? -1 : 1);
    int nj = cj + (sy < 0 ? -1 : 1);
    double fx =
        same(grid, ci, cj, ni, cj) ? slope(mid(grid, ci, true), mid(grid, ni, true), grid.x(i)) : 0;
    double fy =
        same(grid, ci, cj, ci, nj)
            ? slope(mid(grid, cj, false), mid(grid, nj, false), grid.y(j))
            : 0;
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(ci, cj, 1 - fx - fy));
    if (fx != 0) {
      parts.add(new Part(ni, cj, fx));
    }
    if (fy != 0) {
      parts.add(new Part(ci, nj, fy));
    }
    return parts;
  }

  private static boolean same(PanelGrid grid, int ci, int cj, int ni, int nj) {
    return grid.has(ni, nj) && grid.section(ci, cj).equals(grid.section(ni, nj));
  }

  private static double mid(PanelGrid grid, int cell, boolean x) {
    return x ? (grid.x(cell) + grid.x(cell + 1)) / 2 : (grid.y(cell) + grid.y(cell + 1)) / 2;
  }

  /** Weight of the farther middle when the value at {@code at} is extended from both. */
  private static double slope(double near, double far, double at) {
    return (at - near) / (far - near);
  }
}
