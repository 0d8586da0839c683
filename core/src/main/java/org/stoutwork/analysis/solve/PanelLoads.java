package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.PlateShape;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;

/** Turns loads into forces on the nodes of a grid, along the normal; exact for the elements. */
final class PanelLoads {
  private final PanelGrid grid;
  private final double[] forces;

  private PanelLoads(PanelGrid grid) {
    this.grid = grid;
    this.forces = new double[grid.nodes()];
  }

  /** Part of a load in one column or row of cells: which, where within it, and how much. */
  private record Share(int cell, double at, double part) {}

  /**
   * Forces by node, N, positive along the normal (so loads come out negative).
   *
   * @throws IllegalArgumentException for a load that leaves the panel or stands on an opening
   */
  static double[] forces(PanelGrid grid, List<PanelLoad> loads) {
    PanelLoads sum = new PanelLoads(grid);
    for (PanelLoad load : loads) {
      if (!load.panel().equals(grid.panel().name())) {
        throw new IllegalArgumentException(
            "a load names the panel '"
                + load.panel()
                + "', but this is panel '"
                + grid.panel().name()
                + "'");
      }
      sum.add(load);
    }
    return sum.forces;
  }

  /** Weight of the panel by node, N: mass per area times {@code gravity} (N per kg, per mm²/m²). */
  static double[] weights(PanelGrid grid, double gravity) {
    PanelLoads sum = new PanelLoads(grid);
    for (int i = 0; i + 1 < grid.nx(); i++) {
      for (int j = 0; j + 1 < grid.ny(); j++) {
        if (grid.has(i, j)) {
          double area = (grid.x(i + 1) - grid.x(i)) * (grid.y(j + 1) - grid.y(j));
          // Loads count against the normal, weights along their own direction.
          sum.addInCell(i, j, 0.5, 0.5, -gravity * grid.section(i, j).mass() * area);
        }
      }
    }
    return sum.forces;
  }

  private void add(PanelLoad load) {
    if (load instanceof PanelLoad.Pressure pressure) {
      addPressure(pressure.q());
    } else if (load instanceof PanelLoad.Patch patch) {
      addPatch(patch);
    } else if (load instanceof PanelLoad.OnLine onLine) {
      addLine(onLine);
    }
  }

  private void addPressure(double q) {
    for (int i = 0; i + 1 < grid.nx(); i++) {
      for (int j = 0; j + 1 < grid.ny(); j++) {
        if (grid.has(i, j)) {
          double force = q * (grid.x(i + 1) - grid.x(i)) * (grid.y(j + 1) - grid.y(j));
          addInCell(i, j, 0.5, 0.5, force);
        }
      }
    }
  }

  private void addPatch(PanelLoad.Patch patch) {
    Panel panel = grid.panel();
    double x0 = patch.at().x() - patch.sizeX() / 2;
    double y0 = patch.at().y() - patch.sizeY() / 2;
    double t = grid.tolerance();
    if (x0 < -t
        || y0 < -t
        || x0 + patch.sizeX() > panel.length() + t
        || y0 + patch.sizeY() > panel.width() + t) {
      throw new IllegalArgumentException(
          "the load of "
              + patch.force()
              + " N at ("
              + patch.at().x()
              + ", "
              + patch.at().y()
              + ") leaves panel '"
              + panel.name()
              + "'; move it inwards or make it smaller");
    }
    List<Share> along = shares(grid.xs(), x0, x0 + patch.sizeX());
    List<Share> across = shares(grid.ys(), y0, y0 + patch.sizeY());
    for (Share x : along) {
      for (Share y : across) {
        addShare(x, y, patch.force() * x.part() * y.part());
      }
    }
  }

  private void addLine(PanelLoad.OnLine onLine) {
    PanelLine line = onLine.line();
    Panel panel = grid.panel();
    double run = line.across() ? panel.width() : panel.length();
    double limit = line.across() ? panel.length() : panel.width();
    double end = Double.isInfinite(line.to()) ? run : line.to();
    if (line.at() > limit + grid.tolerance() || end > run + grid.tolerance()) {
      throw new IllegalArgumentException(
          "the load on " + line.inWords() + " leaves panel '" + panel.name() + "'");
    }
    double force = onLine.q() * (end - line.from());
    List<Share> point = shares(line.across() ? grid.xs() : grid.ys(), line.at(), line.at());
    List<Share> length = shares(line.across() ? grid.ys() : grid.xs(), line.from(), end);
    for (Share p : point) {
      for (Share l : length) {
        addShare(line.across() ? p : l, line.across() ? l : p, force * p.part() * l.part());
      }
    }
  }

  /** Splits the span [from, to] at the lines; a span without length is one share. */
  private static List<Share> shares(double[] lines, double from, double to) {
    List<Share> shares = new ArrayList<>();
    int last = lines.length - 2;
    for (int k = 0; k <= last; k++) {
      double size = lines[k + 1] - lines[k];
      if (to > from) {
        double low = Math.max(from, lines[k]);
        double high = Math.min(to, lines[k + 1]);
        if (high > low) {
          shares.add(
              new Share(k, ((low + high) / 2 - lines[k]) / size, (high - low) / (to - from)));
        }
      } else if (from < lines[k + 1] || k == last) {
        return List.of(new Share(k, Math.min(1, Math.max(0, (from - lines[k]) / size)), 1));
      }
    }
    return shares;
  }

  private void addShare(Share x, Share y, double force) {
    if (grid.has(x.cell(), y.cell())) {
      addInCell(x.cell(), y.cell(), x.at(), y.at(), force);
      return;
    }
    // A load without extent on the side of an opening belongs to the material beside it.
    boolean left = x.at() == 0 && grid.has(x.cell() - 1, y.cell());
    boolean front = y.at() == 0 && grid.has(x.cell(), y.cell() - 1);
    if (left) {
      addInCell(x.cell() - 1, y.cell(), 1, y.at(), force);
    } else if (front) {
      addInCell(x.cell(), y.cell() - 1, x.at(), 1, force);
    } else if (Math.abs(force) > 0) {
      throw new IllegalArgumentException(
          "part of a load on panel '"
              + grid.panel().name()
              + "' stands on an opening near ("
              + grid.x(x.cell())
              + ", "
              + grid.y(y.cell())
              + "); move the load");
    }
  }

  private void addInCell(int i, int j, double s, double t, double force) {
    int[] corners = grid.corners(i, j);
    double[] shape = PlateShape.at(s, t);
    for (int n = 0; n < 4; n++) {
      forces[corners[n]] -= force * shape[n];
    }
  }
}
