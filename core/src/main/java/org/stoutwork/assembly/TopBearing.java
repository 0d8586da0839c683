package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.ScrewRow;
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

  /** Places as near as that to a screw share it, mm. */
  private static final double SAME = 1;

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
    if (!place.screwed()) {
      return new Bearing(place.node(), line, station, 0, 0, 0);
    }
    TopFixing fixing = frames.bench.top().fixing();
    double k = screwSlip(place.rail());
    double pull =
        Slip.ofPulledScrew(fixing.screwDiameter().mm(), fixing.threadLength().mm())
            * fixing.perRail()
            / sharing(place).count();
    return new Bearing(
        place.node(),
        line,
        station,
        k * tight(place, fixing.tightAlong()),
        k * tight(place, fixing.tightAcross()),
        pull);
  }

  private Bearing of(FrameAssembly.Contact contact) {
    int line = frames.grid.lineNear(contact.y());
    int station = frames.grid.stationNear(contact.x());
    double along = holdAlong(contact.stretcher(), station);
    double pull = holdUpward(contact.stretcher(), station);
    return new Bearing(contact.node(), line, station, along, along, pull);
  }

  /** The places that share the screws of a rail. */
  private Stream<Place> sharing(Place place) {
    return places.stream().filter(p -> p.frame() == place.frame() && p.screwed());
  }

  /**
   * How many of the rail's screws without play fall to one place: all shared evenly, or the one
   * that holds the top where it stands. Where none is without play, the first that bears when it is
   * used up is counted as one, in the middle.
   */
  private double tight(Place place, int count) {
    TopFixing fixing = frames.bench.top().fixing();
    if (count > 1) {
      return (double) count / sharing(place).count();
    }
    EndFrame frame = frames.bench.endFrames().get(place.frame());
    double at = ScrewRow.of(frames.bench, frame).still(fixing.held());
    double nearest = sharing(place).mapToDouble(p -> Math.abs(p.y() - at)).min().orElseThrow();
    if (Math.abs(place.y() - at) > nearest + SAME) {
      return 0;
    }
    return 1.0 / sharing(place).filter(p -> Math.abs(p.y() - at) <= nearest + SAME).count();
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
