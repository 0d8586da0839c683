package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.PanelLine;

/**
 * How the forces at a node follow from those at the middles of the cells around it, where they are
 * most accurate. Inside a panel they are interpolated between the four middles. At its sides, where
 * the section changes, and on supported lines, where moments have a kink, they are extended
 * linearly from each side through the next cells of the same section, and the mean of the sides is
 * taken. In the spirit of O. C. Zienkiewicz and J. Z. Zhu, "The superconvergent patch recovery and
 * a posteriori error estimates", IJNME 33 (1992).
 */
final class PanelStencil {
  /** Part of one cell. */
  record Part(int i, int j, double weight) {}

  private PanelStencil() {}

  /** The parts of the cells at node (i, j); they sum to one. */
  static List<Part> at(PanelGrid grid, int i, int j) {
    if (isSmooth(grid, i, j)) {
      return between(grid, i, j);
    }
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

  private static boolean isSmooth(PanelGrid grid, int i, int j) {
    boolean same =
        grid.has(i - 1, j - 1)
            && same(grid, i - 1, j - 1, i, j - 1)
            && same(grid, i - 1, j - 1, i - 1, j)
            && same(grid, i - 1, j - 1, i, j);
    return same && grid.panel().supports().stream().noneMatch(s -> isOn(grid, s.line(), i, j));
  }

  private static boolean isOn(PanelGrid grid, PanelLine line, int i, int j) {
    double off = Math.abs(line.at() - (line.across() ? grid.x(i) : grid.y(j)));
    double along = line.across() ? grid.y(j) : grid.x(i);
    double t = grid.tolerance();
    return off <= t && along >= line.from() - t && along <= line.to() + t;
  }

  private static List<Part> between(PanelGrid grid, int i, int j) {
    double s = slope(mid(grid, i - 1, true), mid(grid, i, true), grid.x(i));
    double t = slope(mid(grid, j - 1, false), mid(grid, j, false), grid.y(j));
    return List.of(
        new Part(i - 1, j - 1, (1 - s) * (1 - t)),
        new Part(i, j - 1, s * (1 - t)),
        new Part(i, j, s * t),
        new Part(i - 1, j, (1 - s) * t));
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
