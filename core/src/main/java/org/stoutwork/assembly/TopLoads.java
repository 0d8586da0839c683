package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;

/** The load cases of a bench model. Forces of one newton stand for actions of any size. */
public final class TopLoads {

  /** Standard gravity, m/s² (third CGPM, 1901). */
  public static final double GRAVITY = 9.80665;

  private final Bench bench;
  private final TopGrid grid;
  private final BenchModel model;

  /** The load cases of one model. */
  public TopLoads(BenchModel model) {
    this.model = model;
    this.bench = model.bench();
    this.grid = model.grid();
  }

  /** Weight of the bench and of what is fixed to it: vises, machines, ballast. */
  public LoadCase permanent() {
    List<Load> loads = new ArrayList<>();
    loads.add(Load.selfWeight());
    bench.vises().forEach(vise -> loads.add(vise(vise)));
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine machine) {
        loads.addAll(machine(machine));
      } else if (weight instanceof Weight.Ballast ballast) {
        loads.addAll(shelf(bench, model.parts(), ballast.mass().kg() * GRAVITY));
      }
    }
    return new LoadCase("permanent", loads);
  }

  /** A vise hangs outside its edge; its weight acts half-way out. */
  private Load vise(Vise vise) {
    double out = vise.outreach().mm() / 2;
    double w = bench.top().width().mm();
    double l = bench.top().length().mm();
    double at = vise.at().mm();
    return switch (vise.edge()) {
      case FRONT -> weightAt(at, -out, vise.mass().kg());
      case BACK -> weightAt(at, w + out, vise.mass().kg());
      case LEFT -> weightAt(-out, at, vise.mass().kg());
      case RIGHT -> weightAt(l + out, at, vise.mass().kg());
    };
  }

  private List<Load> machine(Weight.Machine machine) {
    List<Load> loads = new ArrayList<>();
    double dx = machine.baseAlong().mm() / 2;
    double dy = machine.baseAcross().mm() / 2;
    for (int sx = -1; sx <= 1; sx += 2) {
      for (int sy = -1; sy <= 1; sy += 2) {
        loads.add(
            weightAt(
                machine.x().mm() + sx * dx, machine.y().mm() + sy * dy, machine.mass().kg() / 4));
      }
    }
    return loads;
  }

  /** A weight anywhere: on the nearest node, with the moment of its distance from it. */
  private Load weightAt(double x, double y, double kg) {
    int line = grid.lineNear(y);
    int station = grid.stationNear(x);
    double force = -kg * GRAVITY;
    Vec3 arm = new Vec3(x - grid.stations().get(station), y - grid.lines().get(line), 0);
    Vec3 down = new Vec3(0, 0, force);
    return new Load.OnNode(TopStrips.node(line, station), down, arm.cross(down));
  }

  /** Stock on the top and gear on the shelf. */
  public LoadCase stored() {
    List<Load> loads = new ArrayList<>();
    for (Weight weight : bench.weights()) {
      double force = weight.mass().kg() * GRAVITY;
      if (weight instanceof Weight.OnTop) {
        loads.addAll(spread(force));
      } else if (weight instanceof Weight.OnShelf) {
        loads.addAll(shelf(bench, model.parts(), force));
      }
    }
    return new LoadCase("stored", loads);
  }

  /** Whether anything is stored on the bench. */
  public boolean storesAnything() {
    return bench.weights().stream().anyMatch(w -> !w.fixed());
  }

  private List<Load> spread(double force) {
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < grid.lines().size(); i++) {
      double reach = grid.stations().get(grid.stations().size() - 1) - grid.stations().get(0);
      double q = -force * grid.share(i) / (grid.width() * reach);
      String part = TopStrips.ALONG + " " + (i + 1);
      part(part).pieces().forEach(piece -> loads.add(Load.line(piece.member(), 0, 0, q)));
    }
    return loads;
  }

  /** A shelf lies on the lowest stretchers, or on the bottom rails if there are none. */
  static List<Load> shelf(Bench bench, List<Part> parts, double force) {
    double lowest = bench.stretchers().stream().mapToDouble(s -> s.centreAt().mm()).min().orElse(0);
    List<Part> bearers = new ArrayList<>();
    for (Stretcher stretcher : bench.stretchers()) {
      if (stretcher.centreAt().mm() < lowest + 1) {
        parts.stream()
            .filter(p -> p.kind() == PartKind.STRETCHER && p.name().startsWith(stretcher.name()))
            .forEach(bearers::add);
      }
    }
    if (bearers.isEmpty()) {
      parts.stream().filter(p -> p.kind() == PartKind.BOTTOM_RAIL).forEach(bearers::add);
    }
    double length = bearers.stream().mapToDouble(Part::length).sum();
    List<Load> loads = new ArrayList<>();
    bearers.forEach(
        part ->
            part.pieces().forEach(p -> loads.add(Load.line(p.member(), 0, 0, -force / length))));
    return loads;
  }

  private Part part(String name) {
    return model.parts().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /** One newton down, spread over the whole top. */
  public LoadCase unitSpread() {
    return new LoadCase("spread over the whole top", spread(1));
  }

  /** One newton down on one place of the top. */
  public LoadCase unitPoint(int line, int station) {
    return LoadCase.of(
        "at " + placeWords(line, station), Load.node(TopStrips.node(line, station), 0, 0, -1));
  }

  /** One newton along the bench at the upper face of the top. */
  public LoadCase unitAlong(int line, int station) {
    Vec3 force = new Vec3(1, 0, 0);
    return thrust(line, station, force, "along the bench");
  }

  /** One newton across the bench at the upper face of the top. */
  public LoadCase unitAcross(int line, int station) {
    Vec3 force = new Vec3(0, 1, 0);
    return thrust(line, station, force, "across the bench");
  }

  private LoadCase thrust(int line, int station, Vec3 force, String way) {
    Vec3 arm = new Vec3(0, 0, bench.top().thicknessMm() / 2);
    Load load = new Load.OnNode(TopStrips.node(line, station), force, arm.cross(force));
    return LoadCase.of(way + " at " + placeWords(line, station), load);
  }

  /** The name of the top's node at a place. */
  public static String node(int line, int station) {
    return TopStrips.node(line, station);
  }

  /** A place on the top in words. */
  public String placeWords(int line, int station) {
    return Math.round(grid.stations().get(station))
        + " mm from the left end, "
        + Math.round(grid.lines().get(line))
        + " mm from the front edge";
  }
}
