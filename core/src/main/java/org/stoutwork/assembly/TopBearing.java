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
import org.stoutwork.bench.TopFixing;

/**
 * What carries the top. Under a plate the bearings are ties; under a grillage they are short stiff
 * posts from the rails' axes to the strips above them. A post passes the vertical force; sideways
 * it passes what the screws or the glue can; it passes no moment, because a top that rests on an
 * edge may rock on it.
 */
final class TopBearing {

  private static final String POST = "bearing post";
  private static final double STEEL_E = 210_000;
  private static final double STEEL_G = 81_000;

  /** Thread in the top of a screw whose thread is not stated, in diameters; project default. */
  private static final double THREAD_DIAMETERS = 6;

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

  /** Every place, rails first. */
  List<Bearing> bearings() {
    List<Bearing> out = new ArrayList<>();
    places.forEach(place -> out.add(of(place)));
    frames.stretcherContacts.forEach(contact -> out.add(of(contact)));
    return out;
  }

  /** Puts posts below the strips of a grillage. */
  void buildPosts() {
    frames.model.section(POST, new CrossSection(2000, 1e6, 1e6, 1e6, 0, 0));
    frames.model.material(POST, STEEL_E, STEEL_G, 0);
    for (Bearing b : bearings()) {
      post(b.node(), TopStrips.node(b.line(), b.station()), b.alongX(), b.acrossY());
    }
  }

  private Bearing of(Place place) {
    int line = frames.grid.lineNear(place.y());
    int station = frames.grid.stationNear(frames.bench.endFrames().get(place.frame()).at().mm());
    double screws = place.screwed() ? screwsAt(place) : 0;
    TopFixing fixing = frames.bench.top().fixing();
    double k = screwSlip(place.rail()) * screws;
    double pull =
        screws * Slip.ofPulledScrew(fixing.screwDiameter().mm(), fixing.threadLength().mm());
    return new Bearing(place.node(), line, station, k, k, pull);
  }

  private Bearing of(FrameAssembly.Contact contact) {
    int line = frames.grid.lineNear(contact.y());
    int station = frames.grid.stationNear(contact.x());
    double along = holdAlong(contact.stretcher(), station);
    double pull = holdUpward(contact.stretcher(), station);
    return new Bearing(contact.node(), line, station, along, along, pull);
  }

  /** How many of the rail's screws fall to one place. */
  private double screwsAt(Place place) {
    long sharing = places.stream().filter(p -> p.frame() == place.frame() && p.screwed()).count();
    return (double) frames.bench.top().fixing().perRail() / sharing;
  }

  private double screwSlip(Rail rail) {
    return Slip.ofScrew(
        frames.bench.top().fixing().screwDiameter().mm(),
        frames.timbers.apply(rail.wood()).density(),
        frames.timbers.apply(frames.bench.top().layers().get(0).wood()).density());
  }

  private double screws(LayerHold.Screwed screwed, int station) {
    return screwed.rows() * frames.grid.reach(station) / screwed.spacing().mm();
  }

  /** Resistance of a stretcher's hold on the top to parting, for one station, N/mm. */
  private double holdUpward(Stretcher stretcher, int station) {
    if (stretcher.hold() instanceof LayerHold.Screwed screwed) {
      double d = screwed.diameter().mm();
      return screws(screwed, station) * Slip.ofPulledScrew(d, THREAD_DIAMETERS * d);
    }
    return stretcher.hold() instanceof LayerHold.Glued ? Double.POSITIVE_INFINITY : 0;
  }

  /** Resistance of a stretcher's hold on the top to sliding, for one station, N/mm. */
  private double holdAlong(Stretcher stretcher, int station) {
    if (stretcher.hold() instanceof LayerHold.Screwed screwed) {
      return screws(screwed, station)
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
