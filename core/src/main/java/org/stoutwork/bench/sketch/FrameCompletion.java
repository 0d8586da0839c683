package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lamination;
import org.stoutwork.bench.Leg;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.quantity.Length;

/** Completes the end frames: legs, rails and feet. */
final class FrameCompletion {

  private static final Range LEG = new Range(30, 300);
  private static final Range INSET = new Range(0, 600);
  private static final Range THICKNESS = new Range(12, 200);
  private static final Range DEPTH = new Range(25, 400);

  private final Answers answers;
  private final WoodNames woods;
  private final Top top;
  private final double underside;

  FrameCompletion(Answers answers, WoodNames woods, Top top, double height) {
    this.answers = answers;
    this.woods = woods;
    this.top = top;
    this.underside = height - top.thicknessMm();
  }

  /** Thickness of a usual rail between legs that are so thick along the bench, mm. */
  static double usualLeg(double benchHeight) {
    return Math.ceil(benchHeight / 50) * 5;
  }

  static double usualRail(double legAlong) {
    return Math.round(legAlong * 0.11) * 5.0;
  }

  List<EndFrame> complete(Optional<EndFrameSketch> common, List<EndFrameSketch> given) {
    EndFrameSketch shared = common.orElseGet(EndFrameSketch::new);
    List<EndFrameSketch> frames = given.isEmpty() ? two() : given;
    List<EndFrame> out = new ArrayList<>();
    for (int i = 0; i < frames.size(); i++) {
      out.add(new One(i, frames.size(), frames.get(i), shared).complete());
    }
    return out;
  }

  /** Two end frames at a seventh of the length from the ends, where a top is best supported. */
  private List<EndFrameSketch> two() {
    double inset = Math.round(top.length().mm() * 0.15 / 5) * 5.0;
    double far = top.length().mm() - inset;
    answers.or(
        "endFrames.at",
        Optional.empty(),
        inset,
        Length.ofMm(inset) + " and " + Length.ofMm(far),
        "two end frames, 0.15 of the length from each end");
    return List.of(
        new EndFrameSketch().at(Length.ofMm(inset)), new EndFrameSketch().at(Length.ofMm(far)));
  }

  /** One end frame; what it does not say itself is taken from what is said of all. */
  private final class One {

    private final String key;
    private final EndFrameSketch own;
    private final EndFrameSketch shared;
    private final String name;

    One(int index, int count, EndFrameSketch own, EndFrameSketch shared) {
      this.key = "endFrames[%s]".formatted(index);
      this.own = own;
      this.shared = shared;
      this.name = own.name.orElse(nameOf(index, count));
    }

    EndFrame complete() {
      Length at =
          answers.length(
              key + ".at",
              own.at,
              () -> top.length().mm() / 2,
              new Range(0, top.length().mm()),
              "half-way along the top");
      LegSketch legs = Merged.of(own.legs, shared.legs, LegSketch::new);
      LegSketch common = shared.legs.orElse(legs);
      Leg leg = leg(legs, common);
      Length front = inset(legs.frontInset.or(() -> common.frontInset), "frontInset");
      Length back = inset(legs.backInset.or(() -> common.backInset), "backInset");
      Optional<Foot> foot = foot(leg, front, back);
      double floor = foot.map(f -> f.depth().mm()).orElse(0.0);
      Rail topRail = topRail(leg, front, back, floor);
      Optional<Rail> bottomRail = bottomRail(leg, front, back, floor, topRail);
      return new EndFrame(name, at, leg, front, back, topRail, bottomRail, foot);
    }

    private Leg leg(LegSketch legs, LegSketch common) {
      String wood = woods.ofSolid(key + ".legs.wood", legs.wood.or(() -> common.wood));
      Length along =
          answers.length(
              key + ".legs.along",
              legs.along.or(() -> common.along),
              this::usualLeg,
              LEG,
              "a tenth of the height, to the next 5 mm");
      Length across =
          answers.length(
              key + ".legs.across",
              legs.across.or(() -> common.across),
              along::mm,
              LEG,
              "as along the bench");
      return new Leg(wood, along, across, lamination(legs, common));
    }

    private Optional<Lamination> lamination(LegSketch legs, LegSketch common) {
      Optional<Integer> count = legs.laminations.or(() -> common.laminations);
      if (count.isEmpty()) {
        return Optional.empty();
      }
      if (count.get() < 2 || count.get() > Lamination.MOST) {
        answers.fault(
            key + ".legs.laminations",
            Integer.toString(count.get()),
            "2 to %s pieces can be glued to a leg".formatted(Lamination.MOST));
        return Optional.empty();
      }
      Grain stacked =
          answers.or(
              key + ".legs.laminated",
              legs.laminated.or(() -> common.laminated),
              Grain.ALONG,
              Grain.ALONG.words(),
              "pieces stacked along the bench");
      return Optional.of(new Lamination(count.get(), stacked));
    }

    private double usualLeg() {
      return FrameCompletion.usualLeg(underside + top.thicknessMm());
    }

    private Length inset(Optional<Length> given, String side) {
      return answers.length(
          key + ".legs." + side, given, () -> 25.0, INSET, "legs a little inside the top's edge");
    }

    private double clearAcross(Leg leg, Length front, Length back) {
      return top.width().mm() - front.mm() - back.mm() - 2 * leg.across().mm();
    }

    private Optional<Foot> foot(Leg leg, Length front, Length back) {
      return own.foot.or(() -> shared.foot).map(f -> foot(f, leg, front, back));
    }

    private Foot foot(FootSketch f, Leg leg, Length front, Length back) {
      String at = key + ".foot";
      double outer = top.width().mm() - front.mm() - back.mm();
      Length thickness =
          answers.length(
              at + ".thickness", f.thickness, () -> leg.along().mm(), THICKNESS, "as the legs");
      Length depth =
          answers.length(at + ".depth", f.depth, () -> 70.0, DEPTH, "a usual depth of a sled foot");
      Length length =
          answers.length(
              at + ".length",
              f.length,
              () -> outer,
              new Range(outer, 3000),
              "from outer leg face to outer leg face");
      Length pad =
          answers.length(
              at + ".pad", f.pad, () -> 100.0, new Range(10, length.mm() / 2), "a hand's width");
      String wood = woods.ofSolid(at + ".wood", f.wood.or(() -> own.legs.flatMap(l -> l.wood)));
      JointPlace place =
          new JointPlace(
              at + ".joint",
              leg.across().mm(),
              leg.along().mm(),
              depth.mm(),
              thickness.mm(),
              Double.POSITIVE_INFINITY,
              false,
              woods.kind(leg.wood()),
              JointPlace.Usual.GLUED);
      BenchJoint joint = JointCompletion.complete(answers, place, f.joint);
      return new Foot(wood, thickness, depth, length, pad, joint);
    }

    private Rail topRail(Leg leg, Length front, Length back, double floor) {
      RailSketch rail = Merged.of(own.topRail, shared.topRail, RailSketch::new);
      String at = key + ".topRail";
      Seat seat =
          answers.or(at + ".seat", rail.seat, Seat.BETWEEN, Seat.BETWEEN.words(), "the usual way");
      Length depth =
          answers.length(at + ".depth", rail.depth, () -> 110.0, DEPTH, "a usual depth of rail");
      Heights.refuse(answers, at, rail, "the top rail lies directly under the top");
      Length centre = Length.ofMm(underside - depth.mm() / 2);
      Length span = span(rail, at, seat, leg, front, back);
      return rail(rail, at, leg, seat, depth, centre, span, floor);
    }

    private Length span(RailSketch rail, String at, Seat seat, Leg leg, Length front, Length back) {
      double outer = top.width().mm() - front.mm() - back.mm();
      if (seat == Seat.OVER) {
        return answers.length(
            at + ".length",
            rail.length,
            () -> outer,
            new Range(outer, 3000),
            "from outer leg face to outer leg face");
      }
      rail.length.ifPresent(
          l ->
              answers.fault(
                  at + ".length",
                  l.toString(),
                  "a rail between the legs is as long as their distance; leave the length out"));
      return Length.ofMm(Math.max(1, clearAcross(leg, front, back)));
    }

    private Optional<Rail> bottomRail(
        Leg leg, Length front, Length back, double floor, Rail topRail) {
      if (own.withoutBottomRail.or(() -> shared.withoutBottomRail).orElse(false)) {
        return Optional.empty();
      }
      RailSketch rail = Merged.of(own.bottomRail, shared.bottomRail, RailSketch::new);
      String at = key + ".bottomRail";
      Length depth =
          answers.length(at + ".depth", rail.depth, () -> 90.0, DEPTH, "a usual depth of rail");
      double ceiling = topRail.centreAt().mm() - topRail.depth().mm() / 2;
      Length centre =
          Heights.centre(
              answers,
              at,
              Heights.of(rail),
              depth.mm(),
              new Heights.Room(floor, ceiling, floor + 120),
              "lower edge 120 mm above the floor or the foot");
      Seat seat = Seat.BETWEEN;
      Length span = span(rail, at, seat, leg, front, back);
      return Optional.of(rail(rail, at, leg, seat, depth, centre, span, floor));
    }

    private Rail rail(
        RailSketch rail,
        String at,
        Leg leg,
        Seat seat,
        Length depth,
        Length centre,
        Length span,
        double floor) {
      Length thickness =
          answers.length(
              at + ".thickness",
              rail.thickness,
              () -> usualRail(leg.along().mm()),
              THICKNESS,
              "0.55 of the leg, to the nearest 5 mm");
      String wood = woods.ofSolid(at + ".wood", rail.wood);
      Length proud = rail.proud.orElse(Length.ofMm(0));
      JointPlace place =
          seat == Seat.OVER
              ? new JointPlace(
                  at + ".joint",
                  leg.across().mm(),
                  leg.along().mm(),
                  depth.mm(),
                  thickness.mm(),
                  Double.POSITIVE_INFINITY,
                  false,
                  woods.kind(leg.wood()),
                  JointPlace.Usual.GLUED)
              : new JointPlace(
                  at + ".joint",
                  depth.mm(),
                  thickness.mm(),
                  leg.across().mm(),
                  leg.along().mm(),
                  Math.min(
                      underside - proud.mm() - centre.mm() - depth.mm() / 2,
                      centre.mm() - depth.mm() / 2 - floor),
                  false,
                  woods.kind(wood),
                  JointPlace.Usual.GLUED);
      BenchJoint joint = JointCompletion.complete(answers, place, rail.joint);
      Proudness.check(answers, at, seat, proud, place, joint);
      return new Rail(wood, thickness, depth, centre, seat, span, proud, joint);
    }
  }

  private static String nameOf(int index, int count) {
    if (index == 0) {
      return "left";
    }
    if (index == count - 1) {
      return "right";
    }
    return count == 3 ? "middle" : "middle " + index;
  }
}
