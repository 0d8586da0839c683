package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.EndExtension;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Leg;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.quantity.Length;

/** Completes the stretchers. */
final class StretcherCompletion {

  private static final Range THICKNESS = new Range(12, 200);
  private static final double SLACK = 1e-6;
  private static final Range DEPTH = new Range(25, 500);

  /** Usual lower edge above the floor or the foot, mm. */
  private static final double USUAL_ABOVE = 150;

  /** Wood of the leg between two joints that would take the same place, mm. */
  private static final double CLEAR = 10;

  private static final Set<JointKind> TAKES_THE_LEG =
      Set.of(JointKind.HALF_LAP, JointKind.BRIDLE, JointKind.CORNER_BRIDLE);

  private final Answers answers;
  private final WoodNames woods;
  private final EndFrame frame;
  private final double underside;
  private final int bays;

  /**
   * @param frame the first of the end frames
   * @param bays between the end frames
   */
  StretcherCompletion(
      Answers answers, WoodNames woods, EndFrame frame, double underside, int bays) {
    this.answers = answers;
    this.woods = woods;
    this.frame = frame;
    this.underside = underside;
    this.bays = bays;
  }

  List<Stretcher> complete(List<StretcherSketch> given) {
    List<StretcherSketch> all = given.isEmpty() ? two() : given;
    List<Stretcher> out = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Set<String> taken = out.stream().map(Stretcher::name).collect(Collectors.toSet());
      out.add(one("stretchers[%s]".formatted(i), all.get(i), taken));
    }
    return out;
  }

  private List<StretcherSketch> two() {
    answers.or(
        "stretchers",
        Optional.empty(),
        0,
        "one in front and one at the back",
        "a bench without stretchers stands only by its top");
    return List.of(
        new StretcherSketch().line(StretcherLine.FRONT),
        new StretcherSketch().line(StretcherLine.BACK));
  }

  private Stretcher one(String key, StretcherSketch s, Set<String> taken) {
    StretcherLine line =
        answers.or(key + ".line", s.line, StretcherLine.FRONT, "front", "where none is named");
    Length depth =
        answers.length(key + ".depth", s.depth, () -> 120.0, DEPTH, "a usual depth of stretcher");
    Length thickness =
        answers.length(
            key + ".thickness",
            s.thickness,
            () -> Math.round(frame.leg().across().mm() * 0.1) * 5.0,
            THICKNESS,
            "half of the leg, to the nearest 5 mm");
    double floor = Layout.legBottom(frame);
    double over = overBottomRail(s, line);
    boolean clear = over > floor + USUAL_ABOVE && over + depth.mm() < underside;
    Length centre =
        Heights.centre(
            answers,
            key,
            Heights.of(s),
            depth.mm(),
            new Heights.Room(floor, underside, clear ? over : floor + USUAL_ABOVE),
            clear
                ? "over the bottom rail, for such a joint takes the leg where it stands"
                : "lower edge 150 mm above the floor or the foot");
    Optional<EndExtension> extension = extension(key, s, depth);
    LayerHold hold = s.hold.orElseGet(LayerHold.Loose::new);
    double endDepth = extension.map(e -> e.depth().mm()).orElse(depth.mm());
    double lower = extension.filter(e -> e.edge() == GluedEdge.BELOW).isPresent() ? -1 : 1;
    double endCentre = centre.mm() + lower * (endDepth - depth.mm()) / 2;
    String wood = woods.ofSolid(key + ".wood", s.wood);
    JointPlace place = place(key, line, endDepth, thickness.mm(), endCentre, woods.kind(wood));
    BenchJoint joint = JointCompletion.complete(answers, place, s.joint);
    String name = s.name.orElseGet(() -> free(nameOf(line, centre.mm()), taken));
    if (taken.contains(name)) {
      answers.fault(key + ".name", name, "a name that no other stretcher on this line has");
    }
    Stretcher made =
        new Stretcher(name, line, wood, thickness, depth, centre, extension, hold, joint);
    requireRoomForEnds(key, made, floor);
    return made;
  }

  /** Where a piece that takes the leg clears the bottom rail, mm; 0 for one that does not. */
  private double overBottomRail(StretcherSketch s, StretcherLine line) {
    boolean takes =
        line != StretcherLine.MIDDLE
            && s.joint.flatMap(j -> j.kind).filter(TAKES_THE_LEG::contains).isPresent();
    return takes
        ? frame
            .bottomRail()
            .map(r -> Math.ceil(r.centreAt().mm() + r.depth().mm() / 2) + CLEAR)
            .orElse(0.0)
        : 0;
  }

  private void requireRoomForEnds(String key, Stretcher made, double floor) {
    if (made.extension().isEmpty()) {
      return;
    }
    double most =
        made.extension().get().edge() == GluedEdge.BELOW
            ? made.highestMm() - floor
            : underside - made.lowestMm();
    if (made.endDepthMm() > most + SLACK) {
      answers.fault(
          key + ".endDepth",
          "such that the ends lie from %s to %s above the floor"
              .formatted(Length.ofMm(made.lowestMm()), Length.ofMm(made.highestMm())),
          "there is room from %s to %s, so at most %s deep with the piece %s"
              .formatted(
                  Length.ofMm(floor),
                  Length.ofMm(underside),
                  Length.ofMm(most),
                  made.extension().get().edge().words()));
    }
  }

  private static String free(String name, Set<String> taken) {
    String free = name;
    for (int i = 2; taken.contains(free); i++) {
      free = name + " " + i;
    }
    return free;
  }

  private Optional<EndExtension> extension(String key, StretcherSketch s, Length depth) {
    if (s.endDepth.isEmpty() && s.endLength.isEmpty() && s.endPiece.isEmpty()) {
      return Optional.empty();
    }
    Length endDepth =
        answers.length(
            key + ".endDepth",
            s.endDepth,
            () -> depth.mm() * 1.5,
            new Range(depth.mm(), 500),
            "one and a half times the depth of the stretcher");
    Length endLength =
        answers.length(
            key + ".endLength",
            s.endLength,
            () -> 2 * depth.mm(),
            new Range(20, 1000),
            "twice the depth of the stretcher");
    GluedEdge edge =
        answers.or(
            key + ".endPiece",
            s.endPiece,
            GluedEdge.BELOW,
            GluedEdge.BELOW.words(),
            "under the stretcher, where there is room");
    return Optional.of(new EndExtension(endDepth, endLength, edge));
  }

  private JointPlace place(
      String key,
      StretcherLine line,
      double depth,
      double thickness,
      double centre,
      WoodNames.Kind wood) {
    if (line != StretcherLine.MIDDLE) {
      Leg leg = frame.leg();
      return new JointPlace(
          key + ".joint",
          depth,
          thickness,
          leg.along().mm(),
          leg.across().mm(),
          Math.min(legTop() - centre - depth / 2, centre - depth / 2 - Layout.legBottom(frame)),
          bays > 1,
          wood,
          JointPlace.Usual.BOLTED);
    }
    Rail rail = Layout.railNear(frame, centre);
    return new JointPlace(
        key + ".joint",
        depth,
        thickness,
        rail.thickness().mm(),
        rail.length().mm(),
        Double.POSITIVE_INFINITY,
        bays > 1,
        wood,
        JointPlace.Usual.GLUED);
  }

  private double legTop() {
    Rail rail = frame.topRail();
    return rail.seat() == Seat.OVER
        ? rail.centreAt().mm() - rail.depth().mm() / 2
        : underside - rail.proud().mm();
  }

  private String nameOf(StretcherLine line, double centre) {
    String level = centre > underside * 0.6 ? "upper" : "lower";
    return level + " " + line.words() + " stretcher";
  }
}
