package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLoad;

/**
 * What any load anywhere on a panel does to one figure at one place, from a single solution a mesh:
 * by reciprocity (Maxwell, Betti) the panel deflected by the figure's own cause is the influence
 * surface. One-way supports count as touching everywhere. Immutable.
 */
public final class PanelInfluence {
  private static final double THIRD = 1.0 / 3;

  private final Surface coarse;
  private final Surface fine;

  private PanelInfluence(Surface coarse, Surface fine) {
    this.coarse = coarse;
    this.fine = fine;
  }

  /** Deflections of one mesh under the cause. */
  private static final class Surface {
    private final PanelGrid grid;
    private final double[] u;

    Surface(PanelGrid grid, PanelQuantity quantity, double x, double y) {
      PanelSystem system = new PanelSystem(grid);
      this.grid = grid;
      this.u = system.solveTouching(PanelFunctional.of(grid, system.elements(), quantity, x, y));
    }

    double under(PanelLoad load) {
      double[] forces = PanelLoads.forces(grid, List.of(load));
      double sum = 0;
      for (int n = 0; n < forces.length; n++) {
        sum += forces[n] * u[3 * n];
      }
      return sum;
    }
  }

  /**
   * The influence surface of a figure.
   *
   * @throws IllegalArgumentException for a place without material
   * @throws PanelNotHeldException when nothing keeps the panel from moving
   */
  public static PanelInfluence of(Panel panel, PanelQuantity quantity, double x, double y) {
    Panel reporting = panel.toBuilder().report(x, y).build();
    List<PanelGrid> grids = PanelMesher.pair(reporting, List.of());
    return new PanelInfluence(
        new Surface(grids.get(0), quantity, x, y), new Surface(grids.get(1), quantity, x, y));
  }

  /** The figure under a load, extrapolated from both meshes. */
  public double of(PanelLoad load) {
    double high = fine.under(load);
    return high + THIRD * (high - coarse.under(load));
  }

  /** The figure under a force of 1 N at a place, against the normal. */
  public double at(double x, double y) {
    return of(PanelLoad.point(fine.grid.panel().name(), x, y, 1));
  }

  /** Places along of the lines of the finer mesh, for drawing. */
  public double[] linesX() {
    return fine.grid.xs();
  }

  /** Places across of the lines of the finer mesh. */
  public double[] linesY() {
    return fine.grid.ys();
  }
}
