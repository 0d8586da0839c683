package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelArea;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.PanelZone;

/** The lines that divide a panel, the section of each cell, and the numbers of the nodes. */
final class PanelGrid {
  private final Panel panel;
  private final double[] xs;
  private final double[] ys;
  private final PanelSection[][] cells;
  private final int[][] number;
  private final int nodes;

  PanelGrid(Panel panel, double[] xs, double[] ys) {
    this.panel = panel;
    this.xs = xs;
    this.ys = ys;
    this.cells = new PanelSection[xs.length - 1][ys.length - 1];
    for (int i = 0; i < cells.length; i++) {
      for (int j = 0; j < cells[i].length; j++) {
        cells[i][j] = sectionAt((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2);
      }
    }
    this.number = new int[xs.length][ys.length];
    int count = 0;
    for (int i = 0; i < xs.length; i++) {
      for (int j = 0; j < ys.length; j++) {
        boolean used = has(i - 1, j - 1) || has(i, j - 1) || has(i - 1, j) || has(i, j);
        number[i][j] = used ? count++ : -1;
      }
    }
    this.nodes = count;
  }

  private PanelSection sectionAt(double x, double y) {
    for (PanelArea opening : panel.openings()) {
      if (opening.contains(x, y)) {
        return null;
      }
    }
    PanelSection section = panel.section();
    for (PanelZone zone : panel.zones()) {
      if (zone.area().contains(x, y)) {
        section = zone.section();
      }
    }
    return section;
  }

  /** The grid with every cell cut into four, the new lines given. */
  PanelGrid with(double[] finerX, double[] finerY) {
    return new PanelGrid(panel, finerX, finerY);
  }

  Panel panel() {
    return panel;
  }

  /** Number of lines x = const. */
  int nx() {
    return xs.length;
  }

  /** Number of lines y = const. */
  int ny() {
    return ys.length;
  }

  double x(int i) {
    return xs[i];
  }

  double y(int j) {
    return ys[j];
  }

  double[] xs() {
    return xs.clone();
  }

  double[] ys() {
    return ys.clone();
  }

  /** Nodes with material beside them. */
  int nodes() {
    return nodes;
  }

  /** Number of a node, -1 inside an opening. */
  int node(int i, int j) {
    return number[i][j];
  }

  /** True when the cell is on the panel and not an opening. */
  boolean has(int i, int j) {
    return i >= 0 && j >= 0 && i < cells.length && j < cells[0].length && cells[i][j] != null;
  }

  /** Section of a cell, null for an opening. */
  PanelSection section(int i, int j) {
    return cells[i][j];
  }

  /** The corners of a cell in the order of the elements. */
  int[] corners(int i, int j) {
    return new int[] {number[i][j], number[i + 1][j], number[i + 1][j + 1], number[i][j + 1]};
  }

  /** Largest difference that still counts as the same place, mm. */
  double tolerance() {
    return 1e-7 * Math.max(panel.length(), panel.width());
  }

  /** Index of the line x = const at a place, -1 when there is none. */
  int lineX(double x) {
    return line(xs, x);
  }

  /** Index of the line y = const at a place, -1 when there is none. */
  int lineY(double y) {
    return line(ys, y);
  }

  private int line(double[] lines, double at) {
    int k = interval(lines, at);
    if (Math.abs(lines[k] - at) <= tolerance()) {
      return k;
    }
    return Math.abs(lines[k + 1] - at) <= tolerance() ? k + 1 : -1;
  }

  /** The column of cells that holds x. */
  int column(double x) {
    return interval(xs, x);
  }

  /** The row of cells that holds y. */
  int row(double y) {
    return interval(ys, y);
  }

  private static int interval(double[] lines, double at) {
    int low = 0;
    int high = lines.length - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (lines[middle] <= at) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
