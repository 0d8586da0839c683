package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMesh;

/** A point or patch load that may stand anywhere on a panel: where does it sink most? */
public final class PanelMovingLoad {
  private static final int PLACES = 17;
  private static final int HALVINGS = 3;

  private final Panel panel;
  private final double sizeX;
  private final double sizeY;
  private final double force;
  private final List<PanelLoad> standing;
  private final PanelSystem system;

  /**
   * The worst place.
   *
   * @param x middle of the load, mm
   * @param y middle of the load, mm
   * @param w mean deflection under the load there, along the normal, mm (negative is down)
   */
  public record Worst(double x, double y, double w) {}

  private PanelMovingLoad(
      Panel panel, double sizeX, double sizeY, double force, List<PanelLoad> standing) {
    this.panel = panel;
    this.sizeX = sizeX;
    this.sizeY = sizeY;
    this.force = force;
    this.standing = List.copyOf(standing);
    Panel even = panel.toBuilder().mesh(evenMesh()).build();
    this.system = new PanelSystem(PanelMesher.pair(even, standing).get(0));
  }

  /**
   * Moves the load over the whole panel, always fully on it, and finds where the mean deflection
   * under it is largest: first on one even mesh that is factorised once, then nearby with meshes
   * that follow the load.
   *
   * @param sizeX side of the load along, mm; 0 for a point
   * @param sizeY side of the load across, mm
   * @param force N, against the normal
   * @param standing loads that stay where they are
   * @throws IllegalArgumentException when the load is larger than the panel or nowhere fits
   * @throws PanelNotHeldException when the panel tips under the load somewhere
   */
  public static Worst worst(
      Panel panel, double sizeX, double sizeY, double force, List<PanelLoad> standing) {
    if (sizeX > panel.length() || sizeY > panel.width()) {
      throw new IllegalArgumentException(
          "a load of "
              + sizeX
              + " by "
              + sizeY
              + " mm does not fit on panel '"
              + panel.name()
              + "'; make it smaller");
    }
    return new PanelMovingLoad(panel, sizeX, sizeY, force, standing).search();
  }

  /**
   * Even, so that no place is favoured by the size of its cells; half the load's size if it can.
   */
  private PanelMesh evenMesh() {
    return new PanelMesh.Even(
        divisions(panel.length(), sizeX, 24, 64), divisions(panel.width(), sizeY, 12, 40));
  }

  private static int divisions(double side, double size, int least, int most) {
    double wanted = size > 0 ? Math.ceil(2 * side / size) : most / 2.0;
    return (int) Math.min(most, Math.max(least, wanted));
  }

  private Worst search() {
    double stepX = (panel.length() - sizeX) / (PLACES - 1);
    double stepY = (panel.width() - sizeY) / (PLACES - 1);
    Worst worst = null;
    for (int i = 0; i < PLACES; i++) {
      for (int j = 0; j < PLACES; j++) {
        worst = worse(worst, sizeX / 2 + i * stepX, sizeY / 2 + j * stepY);
      }
    }
    if (worst == null) {
      throw new IllegalArgumentException(
          "the load fits nowhere between the openings of panel '" + panel.name() + "'");
    }
    return climb(solved(worst.x(), worst.y()), stepX / 2, stepY / 2);
  }

  /** Compass search with meshes that follow the load, so that its deflections are smooth. */
  private Worst climb(Worst start, double firstX, double firstY) {
    Worst best = start;
    double stepX = firstX;
    double stepY = firstY;
    for (int k = 0; k < HALVINGS; k++) {
      Worst middle = best;
      double[][] moves = {{stepX, 0}, {-stepX, 0}, {0, stepY}, {0, -stepY}};
      for (double[] move : moves) {
        double x = middle.x() + move[0];
        double y = middle.y() + move[1];
        if (fits(x, y)) {
          Worst other = solved(x, y);
          best = other.w() < best.w() - 1e-6 * Math.abs(best.w()) ? other : best;
        }
      }
      if (best.equals(middle)) {
        stepX /= 2;
        stepY /= 2;
      }
    }
    return best;
  }

  private PanelLoad load(double x, double y) {
    return PanelLoad.patch(panel.name(), x, y, sizeX, sizeY, force);
  }

  private boolean fits(double x, double y) {
    double t = 1e-9 * panel.length();
    boolean inside =
        x >= sizeX / 2 - t
            && y >= sizeY / 2 - t
            && x <= panel.length() - sizeX / 2 + t
            && y <= panel.width() - sizeY / 2 + t;
    return inside
        && panel.openings().stream()
            .noneMatch(
                o ->
                    x + sizeX / 2 > o.x0()
                        && x - sizeX / 2 < o.x1()
                        && y + sizeY / 2 > o.y0()
                        && y - sizeY / 2 < o.y1());
  }

  private Worst worse(Worst so, double x, double y) {
    if (!fits(x, y)) {
      return so;
    }
    double[] own = PanelLoads.forces(system.grid(), List.of(load(x, y)));
    double[] all = PanelLoads.forces(system.grid(), standing);
    for (int n = 0; n < all.length; n++) {
      all[n] += own[n];
    }
    double w = under(own, system.solve(all));
    // A draw goes to the first place, so that rounding does not choose between equal ones.
    return so == null || w < so.w() - 1e-9 * Math.abs(so.w()) ? new Worst(x, y, w) : so;
  }

  private double under(double[] own, PanelState state) {
    double work = 0;
    for (int n = 0; n < own.length; n++) {
      work -= own[n] * state.w(n);
    }
    return work / force;
  }

  private Worst solved(double x, double y) {
    List<PanelLoad> all = new ArrayList<>(standing);
    PanelLoad own = load(x, y);
    all.add(own);
    double[] w = new double[2];
    List<PanelGrid> grids = PanelMesher.pair(panel, all);
    for (int k = 0; k < 2; k++) {
      PanelGrid grid = grids.get(k);
      PanelState state = new PanelSystem(grid).solve(PanelLoads.forces(grid, all));
      w[k] = under(PanelLoads.forces(grid, List.of(own)), state);
    }
    return new Worst(x, y, w[1] + (w[1] - w[0]) / 3);
  }
}
