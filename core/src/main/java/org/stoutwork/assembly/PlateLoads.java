package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;

/** The load cases of a plated bench; those of {@link TopLoads} in the same places. */
public final class PlateLoads {

  private static final double PATCH = 2 * TopGrid.HALF_PATCH;

  /** From the edge to the inner fixings of a vise, mm; project default. */
  private static final double GRIP = 150;

  private final PlatedModel model;
  private final Bench bench;
  private final TopGrid grid;
  private final LoadCase permanent;
  private final LoadCase stored;

  /** The load cases of one model. */
  public PlateLoads(PlatedModel model) {
    this.model = model;
    this.bench = model.bench();
    this.grid = model.grid();
    this.permanent = new LoadCase("permanent", weights());
    this.stored = new LoadCase("stored", storage());
  }

  /** Weight of the bench and of what is fixed to it: vises, machines, ballast. */
  public LoadCase permanent() {
    return permanent;
  }

  private List<Load> weights() {
    List<Load> loads = new ArrayList<>();
    loads.add(Load.selfWeight());
    bench.vises().forEach(vise -> addVise(loads, vise));
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine machine) {
        addMachine(loads, machine);
      } else if (weight instanceof Weight.Ballast ballast) {
        double force = ballast.mass().kg() * TopLoads.GRAVITY;
        loads.addAll(TopLoads.shelf(bench, model.parts(), force));
      }
    }
    return loads;
  }

  /** A vise hangs outside its edge; its weight acts half-way out. */
  private void addVise(List<Load> loads, Vise vise) {
    double out = vise.outreach().mm() / 2;
    double at = vise.at().mm();
    double force = vise.mass().kg() * TopLoads.GRAVITY;
    switch (vise.edge()) {
      case FRONT -> weight(loads, at, -out, force);
      case BACK -> weight(loads, at, grid.width() + out, force);
      case LEFT -> weight(loads, -out, at, force);
      case RIGHT -> weight(loads, grid.length() + out, at, force);
    }
  }

  private void addMachine(List<Load> loads, Weight.Machine machine) {
    double dx = machine.baseAlong().mm() / 2;
    double dy = machine.baseAcross().mm() / 2;
    double force = machine.mass().kg() * TopLoads.GRAVITY / 4;
    for (int sx = -1; sx <= 1; sx += 2) {
      for (int sy = -1; sy <= 1; sy += 2) {
        weight(loads, machine.x().mm() + sx * dx, machine.y().mm() + sy * dy, force);
      }
    }
  }

  /** A weight anywhere; outside the top it presses on the edge and prises further in. */
  private void weight(List<Load> loads, double x, double y, double force) {
    double edgeX = Math.min(grid.length(), Math.max(0, x));
    double edgeY = Math.min(grid.width(), Math.max(0, y));
    double outX = x - edgeX;
    double outY = y - edgeY;
    double out = Math.hypot(outX, outY);
    if (out == 0) {
      loads.add(PanelLoad.point(TopPlate.NAME, x, y, force));
      return;
    }
    double prise = force * out / GRIP;
    double inX = edgeX - GRIP * outX / out;
    double inY = edgeY - GRIP * outY / out;
    loads.add(PanelLoad.point(TopPlate.NAME, edgeX, edgeY, force + prise));
    loads.add(PanelLoad.point(TopPlate.NAME, inX, inY, -prise));
  }

  /** Stock on the top and gear on the shelf. */
  public LoadCase stored() {
    return stored;
  }

  private List<Load> storage() {
    List<Load> loads = new ArrayList<>();
    for (Weight weight : bench.weights()) {
      double force = weight.mass().kg() * TopLoads.GRAVITY;
      if (weight instanceof Weight.OnTop) {
        loads.add(spread(force));
      } else if (weight instanceof Weight.OnShelf) {
        loads.addAll(TopLoads.shelf(bench, model.parts(), force));
      }
    }
    return loads;
  }

  /** Whether anything is stored on the bench. */
  public boolean storesAnything() {
    return bench.weights().stream().anyMatch(w -> !w.fixed());
  }

  private PanelLoad spread(double force) {
    return PanelLoad.pressure(TopPlate.NAME, force / (grid.width() * grid.length()));
  }

  /** One newton down, spread over the whole top. */
  public LoadCase unitSpread() {
    return LoadCase.of("spread over the whole top", spread(1));
  }

  /** One newton down on a patch of half a hand around a place of the grid. */
  public LoadCase unitPatch(int line, int station) {
    double x = grid.stations().get(station);
    double y = grid.lines().get(line);
    double sizeX = Math.min(PATCH, 2 * Math.min(x, grid.length() - x));
    double sizeY = Math.min(PATCH, 2 * Math.min(y, grid.width() - y));
    return LoadCase.of(
        "patch at " + (line + 1) + "." + (station + 1),
        PanelLoad.patch(TopPlate.NAME, x, y, sizeX, sizeY, 1));
  }
}
