package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Stretcher;

/**
 * What carries the top: short stiff posts from the rails' axes to the strips above them. A post
 * passes the vertical force; sideways it passes what the screws or the glue can; it passes no
 * moment, because a top that rests on an edge may rock on it.
 */
final class TopBearing {

  private static final String POST = "bearing post";
  private static final double STEEL_E = 210_000;
  private static final double STEEL_G = 81_000;

  /**
   * A place where a top rail carries the top.
   *
   * @param frame index of the end frame
   * @param node on the rail
   * @param y across the bench, mm
   * @param rail that carries
   * @param screwed whether the rail's screws hold the top here; on a leg it only rests
   */
  private record Place(int frame, String node, double y, Rail rail, boolean screwed) {}

  private final FrameAssembly frames;
  private final List<Place> places = new ArrayList<>();

  TopBearing(FrameAssembly frames) {
    this.frames = frames;
  }

  /** The top rests on a rail and is screwed to it. */
  void on(int frame, String node, double y, Rail rail) {
    places.add(new Place(frame, node, y, rail, true));
  }

  /** The top rests on a leg; no screw holds it there, so that a leg may turn under it. */
  void onLeg(int frame, String node, double y, Rail rail) {
    places.add(new Place(frame, node, y, rail, false));
  }

  void build(double height) {
    frames.model.section(POST, new CrossSection(2000, 1e6, 1e6, 1e6, 0, 0));
    frames.model.material(POST, STEEL_E, STEEL_G, 0);
    for (Place place : places) {
      post(place);
    }
    for (FrameAssembly.Contact contact : frames.stretcherContacts) {
      int line = frames.grid.lineNear(contact.y());
      int station = frames.grid.stationNear(contact.x());
      double along = holdAlong(contact.stretcher(), station);
      post(contact.node(), TopStrips.node(line, station), along, along);
    }
  }

  private void post(Place place) {
    int line = frames.grid.lineNear(place.y());
    int station = frames.grid.stationNear(frames.bench.endFrames().get(place.frame()).at().mm());
    double k = place.screwed() ? screws(place) : 0;
    post(place.node(), TopStrips.node(line, station), k, k);
  }

  /** The share of one place in the resistance of the rail's screws to sliding, N/mm. */
  private double screws(Place place) {
    long sharing = places.stream().filter(p -> p.frame() == place.frame() && p.screwed()).count();
    return screwSlip(place.rail()) * frames.bench.top().fixing().perRail() / sharing;
  }

  private double screwSlip(Rail rail) {
    return Slip.ofScrew(
        frames.bench.top().fixing().screwDiameter().mm(),
        frames.timbers.apply(rail.wood()).density(),
        frames.timbers.apply(frames.bench.top().layers().get(0).wood()).density());
  }

  /** Resistance of a stretcher's hold on the top to sliding, for one station, N/mm. */
  private double holdAlong(Stretcher stretcher, int station) {
    if (stretcher.hold() instanceof LayerHold.Screwed screwed) {
      double screws = screwed.rows() * frames.grid.reach(station) / screwed.spacing().mm();
      return screws
          * Slip.ofScrew(
              screwed.diameter().mm(),
              frames.timbers.apply(stretcher.wood()).density(),
              frames.timbers.apply(frames.bench.top().layers().get(0).wood()).density());
    }
    return stretcher.hold() instanceof LayerHold.Glued ? Double.POSITIVE_INFINITY : 0;
  }

  private void post(String from, String to, double alongX, double acrossY) {
    MemberEnd head =
        MemberEnd.RIGID
            .free(Direction.RX, Direction.RY, Direction.RZ)
            .with(Direction.UY, of(acrossY))
            .with(Direction.UZ, of(alongX));
    String name = "bearing of top on " + from;
    frames.model.member(name, from, to, POST, POST, 0, MemberEnd.RIGID, head);
    frames.bearings.add(name);
  }

  private static EndCondition of(double k) {
    return Double.isInfinite(k) ? EndCondition.RIGID : EndCondition.elastic(k);
  }
}
