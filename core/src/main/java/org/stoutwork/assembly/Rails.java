package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.Joint;
import org.stoutwork.quantity.Writing;
import org.stoutwork.section.Rectangle;

/** Rails and feet, which run across the bench. */
final class Rails {

  private final FrameAssembly frames;
  private final TopBearing bearing;

  Rails(FrameAssembly frames) {
    this.frames = frames;
    this.bearing = new TopBearing(frames);
  }

  static String node(String part, double y) {
    return part + " at " + Writing.fixed(y, 0);
  }

  void build(int index) {
    EndFrame frame = frames.bench.endFrames().get(index);
    Rail top = frame.topRail();
    String name = frame.name() + " top rail";
    if (top.seat() == Seat.BETWEEN) {
      between(index, top, name, PartKind.TOP_RAIL, topStops(frame, index, top, name));
    } else {
      over(frame, top, name);
    }
    frame.bottomRail().ifPresent(rail -> bottomRail(index, frame, rail));
    frame.foot().ifPresent(foot -> foot(frame, foot));
  }

  private void bottomRail(int index, EndFrame frame, Rail rail) {
    String name = frame.name() + " bottom rail";
    List<Chain.Stop> stops = new ArrayList<>();
    if (meetsMiddleStretcher(frame, rail)) {
      double y = frames.bench.top().width().mm() / 2;
      stops.add(levelNode(name, frame.at().mm(), y, rail.centreAt().mm()));
    }
    between(index, rail, name, PartKind.BOTTOM_RAIL, stops);
  }

  private boolean meetsMiddleStretcher(EndFrame frame, Rail rail) {
    return frames.bench.stretchers().stream()
        .filter(s -> s.line() == StretcherLine.MIDDLE)
        .anyMatch(s -> Layout.railOf(frame, s).equals(rail));
  }

  private Chain.Stop levelNode(String part, double x, double y, double z) {
    String node = node(part, y);
    frames.model.node(node, x, y, z);
    return new Chain.Stop(node, y);
  }

  /** The lines of the top that cross a rail between its shoulders. */
  private List<Chain.Stop> topStops(EndFrame frame, int index, Rail rail, String name) {
    double clear = frame.leg().across().mm() / 2;
    double from = Layout.frontLegY(frame) + clear;
    double to = Layout.backLegY(frames.bench, frame) - clear;
    List<Chain.Stop> stops = new ArrayList<>();
    boolean onLegs = rail.proud().mm() == 0;
    if (onLegs) {
      bearing.onLeg(
          index,
          frames.leg(StretcherLine.FRONT, index).level(rail.centreAt().mm()),
          Layout.frontLegY(frame),
          rail);
    }
    for (double y : Places.inside(from, to, List.of(), frames.grid.lines())) {
      Chain.Stop stop = levelNode(name, frame.at().mm(), y, rail.centreAt().mm());
      stops.add(stop);
      bearing.on(index, stop.node(), y, rail);
    }
    if (onLegs) {
      bearing.onLeg(
          index,
          frames.leg(StretcherLine.BACK, index).level(rail.centreAt().mm()),
          Layout.backLegY(frames.bench, frame),
          rail);
    }
    return stops;
  }

  private void between(int index, Rail rail, String name, PartKind kind, List<Chain.Stop> inner) {
    EndFrame frame = frames.bench.endFrames().get(index);
    double z = rail.centreAt().mm();
    LegLines front = frames.leg(StretcherLine.FRONT, index);
    LegLines back = frames.leg(StretcherLine.BACK, index);
    List<Chain.Stop> stops = new ArrayList<>();
    stops.add(new Chain.Stop(front.level(z), front.y()));
    stops.addAll(inner);
    stops.add(new Chain.Stop(back.level(z), back.y()));
    Rectangle section = new Rectangle(rail.thickness().mm(), rail.depth().mm());
    FrameTimber timber = frames.timbers.apply(rail.wood());
    double kg = Masses.railKg(rail, timber);
    double length = rail.length().mm();
    Chain.stuff(frames.model, name, section, timber, kg / (section.area() * length) * 1e9);
    double arm = frame.leg().across().mm() / 2;
    Joint.Members members =
        new Joint.Members(
            rail.depth().mm(),
            rail.thickness().mm(),
            frame.leg().across().mm(),
            frame.leg().along().mm());
    Joiner atFront = joiner(frame, rail, members, StretcherLine.FRONT);
    Joiner atBack = joiner(frame, rail, members, StretcherLine.BACK);
    MemberEnd start = atFront.level(new Vec3(0, arm, 0));
    MemberEnd end = atBack.level(new Vec3(0, -arm, 0));
    List<Piece> pieces =
        new Chain(frames.model, name, section).through(stops, front.y() + arm, start, end);
    atFront.spot(kind, name, front.name(), pieces.get(0).member(), true);
    atBack.spot(kind, name, back.name(), pieces.get(pieces.size() - 1).member(), false);
    atFront.mortiseAcross(front.name(), z - Layout.legBottom(frame), 1);
    atBack.mortiseAcross(back.name(), z - Layout.legBottom(frame), -1);
    atFront.boreEnd(name, 0);
    atBack.boreEnd(name, length);
    List<Mortise> holes =
        kind == PartKind.TOP_RAIL ? TopScrewHoles.in(frames.bench, frame) : List.of();
    frames.parts.add(new Part(name, kind, rail.wood(), pieces, holes, length));
  }

  private Joiner joiner(EndFrame frame, Rail rail, Joint.Members members, StretcherLine side) {
    return new Joiner(
        frames,
        rail.joint(),
        members,
        rail.wood(),
        frame.leg().wood(),
        Joiner.Reach.of(frames.bench, frame, rail.centreAt().mm(), rail.depth().mm()),
        new CrossBores(frames.bench, frame).ofRail(rail, side));
  }

  /** A rail that lies over the legs runs on beyond them. */
  private void over(EndFrame frame, Rail rail, String name) {
    double middle = Layout.footMiddle(frames.bench, frame);
    double from = middle - rail.length().mm() / 2;
    double to = middle + rail.length().mm() / 2;
    List<Double> legs = List.of(Layout.frontLegY(frame), Layout.backLegY(frames.bench, frame));
    double z = rail.centreAt().mm();
    double x = frame.at().mm();
    int index = frames.bench.endFrames().indexOf(frame);
    List<Chain.Stop> stops = new ArrayList<>();
    stops.add(levelNode(name, x, from, z));
    for (double y : Places.inside(from, to, legs, frames.grid.lines())) {
      Chain.Stop stop = levelNode(name, x, y, z);
      stops.add(stop);
      bearing.on(index, stop.node(), y, rail);
    }
    stops.add(levelNode(name, x, to, z));
    List<Mortise> holes = TopScrewHoles.in(frames.bench, frame);
    level(name, PartKind.TOP_RAIL, rail.wood(), section(rail), stops, holes, railKg(rail));
  }

  private static Rectangle section(Rail rail) {
    return new Rectangle(rail.thickness().mm(), rail.depth().mm());
  }

  private double railKg(Rail rail) {
    return Masses.railKg(rail, frames.timbers.apply(rail.wood()));
  }

  private void level(
      String name,
      PartKind kind,
      String wood,
      Rectangle section,
      List<Chain.Stop> stops,
      List<Mortise> holes,
      double kg) {
    double length = stops.get(stops.size() - 1).at() - stops.get(0).at();
    FrameTimber timber = frames.timbers.apply(wood);
    Chain.stuff(frames.model, name, section, timber, kg / (section.area() * length) * 1e9);
    List<Piece> pieces =
        new Chain(frames.model, name, section)
            .through(stops, stops.get(0).at(), MemberEnd.RIGID, MemberEnd.RIGID);
    frames.parts.add(new Part(name, kind, wood, pieces, holes, length));
  }

  /** A sled foot stands on the middles of its pads. */
  private void foot(EndFrame frame, Foot foot) {
    String name = frame.name() + " foot";
    double middle = Layout.footMiddle(frames.bench, frame);
    double reach = (foot.length().mm() - foot.pad().mm()) / 2;
    double z = foot.depth().mm() / 2;
    double x = frame.at().mm();
    List<Double> legs = List.of(Layout.frontLegY(frame), Layout.backLegY(frames.bench, frame));
    List<Double> pads = List.of(middle - reach, middle + reach);
    List<Double> places = Places.merged(legs, pads);
    List<Chain.Stop> stops = new ArrayList<>();
    places.forEach(y -> stops.add(levelNode(name, x, y, z)));
    pads.forEach(y -> frames.stand(node(name, Places.nearest(places, y))));
    Rectangle section = new Rectangle(foot.thickness().mm(), foot.depth().mm());
    double kg = Masses.footKg(foot, frames.timbers.apply(foot.wood()));
    level(name, PartKind.FOOT, foot.wood(), section, stops, List.of(), kg);
  }

  TopBearing bearing() {
    return bearing;
  }
}
