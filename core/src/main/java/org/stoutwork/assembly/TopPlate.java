package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.Bench;

/**
 * The top as an orthotropic plate with transverse shear. It touches rails and stretchers where the
 * grillage stands on posts: there it passes the vertical force, sideways what the screws or the
 * glue can, and no moment.
 */
final class TopPlate {

  /** The name of the panel. */
  static final String NAME = "top";

  /** Longest cells of the first mesh, mm. */
  private static final double CELL_ALONG = 135;

  private static final double CELL_ACROSS = 100;

  private final Bench bench;
  private final Function<String, FrameTimber> timbers;
  private final TopGrid grid;

  TopPlate(Bench bench, Function<String, FrameTimber> timbers, TopGrid grid) {
    this.bench = bench;
    this.timbers = timbers;
    this.grid = grid;
  }

  Panel panel(List<Bearing> bearings, TopContact contact) {
    double h = bench.top().thicknessMm();
    PanelSection whole = new TopSection(bench, timbers).section();
    PanelBuilder panel =
        Panel.builder(NAME, grid.length(), grid.width(), h)
            .place(PanelPlace.flat(new Vec3(0, 0, bench.height().mm() - h / 2)))
            .section(whole)
            .mesh(
                new PanelMesh.Lines(
                    lines(grid.stations(), grid.length(), CELL_ALONG),
                    lines(grid.lines(), grid.width(), CELL_ACROSS)));
    new TopHoles(bench, grid).lay(panel, whole);
    bearings.forEach(b -> tie(panel, b, contact));
    return panel.build();
  }

  /** Lines through every place of the grid, and enough between them. */
  private static List<Double> lines(List<Double> places, double size, double apart) {
    List<Double> stops = new ArrayList<>();
    stops.add(0.0);
    stops.addAll(places);
    stops.add(size);
    List<Double> out = new ArrayList<>();
    for (int i = 0; i + 1 < stops.size(); i++) {
      double gap = stops.get(i + 1) - stops.get(i);
      int pieces = (int) Math.ceil(gap / apart);
      for (int k = 0; k < pieces; k++) {
        out.add(stops.get(i) + gap * k / pieces);
      }
    }
    return out;
  }

  private void tie(PanelBuilder panel, Bearing b, TopContact contact) {
    double x = grid.stations().get(b.station());
    double y = grid.lines().get(b.line());
    boolean rigid = contact == TopContact.HELD || Double.isInfinite(b.upward());
    Map<Direction, Link> links = new EnumMap<>(Direction.class);
    put(links, Direction.UX, b.alongX());
    put(links, Direction.UY, b.acrossY());
    links.put(Direction.UZ, rigid ? Link.RIGID : Link.CONTACT);
    panel.tie(x, y, b.node(), links);
    if (!rigid && b.upward() > 0) {
      panel.tie(x, y, b.node(), Map.of(Direction.UZ, Link.elastic(b.upward())));
    }
  }

  private static void put(Map<Direction, Link> links, Direction way, double k) {
    if (k > 0) {
      links.put(way, Double.isInfinite(k) ? Link.RIGID : Link.elastic(k));
    }
  }
}
