package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.stiffness.SpringSet;
import org.stoutwork.section.Rectangle;

/**
 * Builds the frame of a bench: legs first, then what joins them, then the top and what it rests on.
 * One builder serves one model.
 */
final class FrameAssembly {

  final Bench bench;
  final Function<String, FrameTimber> timbers;
  final JointLevel level;
  final Function<JointStiffness, SpringSet> springs;
  final FloorContact floor;
  final TopGrid grid;
  final FrameModelBuilder model = FrameModel.builder();
  final List<Part> parts = new ArrayList<>();
  final List<JointSpot> joints = new ArrayList<>();
  final Mortises mortises = new Mortises();
  final List<String> feet = new ArrayList<>();
  final List<String> bearings = new ArrayList<>();
  final List<Contact> stretcherContacts = new ArrayList<>();
  private final Map<StretcherLine, List<LegLines>> legs = new EnumMap<>(StretcherLine.class);

  /**
   * A place where a stretcher touches the top.
   *
   * @param stretcher that touches
   * @param node on its axis
   * @param x along the bench, mm
   * @param y across it, mm
   * @param z of the node, mm
   */
  record Contact(Stretcher stretcher, String node, double x, double y, double z) {}

  FrameAssembly(
      Bench bench,
      Function<String, FrameTimber> timbers,
      JointLevel level,
      Function<JointStiffness, SpringSet> springs,
      FloorContact floor) {
    this.bench = bench;
    this.floor = floor;
    this.timbers = timbers;
    this.level = level;
    this.springs = springs;
    this.grid = TopGrid.of(bench);
  }

  BenchModel build() {
    Rails rails = buildFrame();
    TopStrips top = new TopStrips(bench, timbers, grid);
    List<Part> topParts = top.build(model);
    rails.bearing().buildPosts();
    parts.addAll(topParts);
    return new BenchModel(bench, level, model.build(), done(), joints, grid, feet, bearings);
  }

  PlatedModel buildPlated(TopContact contact) {
    Rails rails = buildFrame();
    Panel top = new TopPlate(bench, timbers, grid).panel(rails.bearing().bearings(), contact);
    return new PlatedModel(bench, level, model.build(), done(), grid, top, feet);
  }

  /** Everything below the top. */
  private Rails buildFrame() {
    for (StretcherLine side : List.of(StretcherLine.FRONT, StretcherLine.BACK)) {
      legs.put(
          side, bench.endFrames().stream().map(frame -> LegLines.of(bench, frame, side)).toList());
    }
    legs.values().forEach(lines -> lines.forEach(this::legNodes));
    Rails rails = new Rails(this);
    for (int i = 0; i < bench.endFrames().size(); i++) {
      rails.build(i);
    }
    new StretcherAssembly(this).build();
    buildLegs();
    return rails;
  }

  private List<Part> done() {
    return parts.stream().map(mortises::into).toList();
  }

  LegLines leg(StretcherLine side, int frame) {
    return legs.get(side).get(frame);
  }

  private void legNodes(LegLines leg) {
    leg.levels().forEach((z, node) -> model.node(node, leg.x(), leg.y(), z));
  }

  /** Legs come after rails and feet: their ends may be joined to these. */
  private void buildLegs() {
    for (int i = 0; i < bench.endFrames().size(); i++) {
      EndFrame frame = bench.endFrames().get(i);
      LegEnds ends = new LegEnds(this, i);
      for (StretcherLine side : List.of(StretcherLine.FRONT, StretcherLine.BACK)) {
        leg(frame, leg(side, i), ends);
      }
    }
  }

  private void leg(EndFrame frame, LegLines line, LegEnds ends) {
    Rectangle section = new Rectangle(frame.leg().across().mm(), frame.leg().along().mm());
    FrameTimber timber = timbers.apply(frame.leg().wood());
    List<Chain.Stop> stops = ends.stops(line);
    double bottom = stops.get(0).at();
    double flexible = stops.get(stops.size() - 1).at() - bottom;
    double kg = Masses.legKg(bench, frame, timber);
    Chain.stuff(model, line.name(), section, timber, kg / (section.area() * flexible) * 1e9);
    List<Piece> pieces =
        new Chain(model, line.name(), section).through(stops, bottom, ends.start(), ends.end());
    ends.record(line, pieces);
    parts.add(new Part(line.name(), PartKind.LEG, frame.leg().wood(), pieces, List.of(), flexible));
    if (frame.foot().isEmpty()) {
      stand(stops.get(0).node());
    }
  }

  /** A foot on the floor: it may lift; friction holds its place and keeps it from turning. */
  void stand(String node) {
    model.support(node, Direction.UX, Restraint.FIXED);
    model.support(node, Direction.UY, Restraint.FIXED);
    model.support(
        node,
        Direction.UZ,
        floor == FloorContact.HELD ? Restraint.FIXED : Restraint.COMPRESSION_ONLY);
    model.support(node, Direction.RZ, Restraint.FIXED);
    feet.add(node);
  }
}
