package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.joint.tenon.Mortises;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.section.PiercedSection.Hole;
import org.stoutwork.section.Rectangle;

/** Refuses legs of which the mortises leave too little, alone or where they meet. */
final class LegCuts {

  private final Answers answers;
  private final List<EndFrame> frames;
  private final List<Stretcher> stretchers;

  LegCuts(Answers answers, List<EndFrame> frames, List<Stretcher> stretchers) {
    this.answers = answers;
    this.frames = frames;
    this.stretchers = stretchers;
  }

  /**
   * One hole in a leg.
   *
   * @param by the piece that ends in it
   * @param hole in the plan of the leg: b along the bench, h across it
   * @param from its lower end above the floor, mm
   * @param to its upper end, mm
   */
  private record Bore(String by, Hole hole, double from, double to) {

    boolean meets(Bore other) {
      return from < other.to && other.from < to;
    }
  }

  void check() {
    for (int i = 0; i < frames.size(); i++) {
      Optional<BenchFault> front = fault(i, StretcherLine.FRONT);
      (front.isPresent() ? front : fault(i, StretcherLine.BACK)).ifPresent(answers::fault);
    }
    for (int k = 0; k < stretchers.size(); k++) {
      if (frames.size() > 2) {
        endToEnd(k, stretchers.get(k));
      }
      if (stretchers.get(k).line() == StretcherLine.MIDDLE) {
        intoRail(k, stretchers.get(k));
      }
    }
  }

  /** A middle stretcher may not cut the rail in two that it ends in. */
  private void intoRail(int k, Stretcher stretcher) {
    for (EndFrame frame : frames) {
      Rail rail = Layout.railOf(frame, stretcher);
      double thickness = rail.thickness().mm();
      TenonHole hole = holeOf(stretcher, thickness, rail.length().mm());
      double low = stretcher.endCentreMm() - stretcher.endDepthMm() / 2 + hole.below();
      double bottom = rail.centreAt().mm() - rail.depth().mm() / 2;
      double top = bottom + rail.depth().mm();
      double cut = Math.max(0, Math.min(top, low + hole.height()) - Math.max(bottom, low));
      double deep = Math.min(thickness, hole.depth());
      double left = rail.depth().mm() * thickness - cut * deep;
      double least = Mortises.LEAST_SHARE * rail.depth().mm() * thickness;
      if (left < least) {
        answers.fault(
            "stretchers[%s].joint".formatted(k),
            "such that it leaves %s of the section of the rail of the %s end frame"
                .formatted(area(left), frame.name()),
            "at least %s must stay: take a shallower stretcher, or a joint that goes less deep"
                .formatted(area(least)));
        return;
      }
    }
  }

  private Optional<BenchFault> fault(int i, StretcherLine side) {
    EndFrame frame = frames.get(i);
    Rectangle leg = new Rectangle(frame.leg().along().mm(), frame.leg().across().mm());
    List<Bore> bores = bores(i, side, leg);
    Optional<BenchFault> worst = Optional.empty();
    double least = Mortises.LEAST_SHARE * leg.area();
    for (Bore bore : bores) {
      List<Bore> together = bores.stream().filter(bore::meets).toList();
      double left = Mortises.remaining(leg, together.stream().map(Bore::hole).toList());
      if (left < least) {
        least = left;
        worst = Optional.of(fault(i, side, leg, together, left));
      }
    }
    return worst;
  }

  private static BenchFault fault(
      int i, StretcherLine side, Rectangle leg, List<Bore> together, double left) {
    Set<String> by =
        together.stream().map(Bore::by).collect(Collectors.toCollection(LinkedHashSet::new));
    double low = together.stream().mapToDouble(Bore::from).max().orElseThrow();
    String where =
        together.size() > 1
            ? "such that the mortises for %s meet in the %s leg at %s above the floor and leave %s of its %s"
                .formatted(
                    String.join(" and ", by),
                    side.words(),
                    Length.ofMm(low),
                    area(left),
                    area(leg.area()))
            : "such that the mortise for %s leaves %s of the %s leg's %s"
                .formatted(by.iterator().next(), area(left), side.words(), area(leg.area()));
    return BenchFault.of(
        "endFrames[%s].legs".formatted(i),
        where,
        "at least %s must stay: make the tenons thinner or shorter, the leg thicker%s"
            .formatted(
                area(Mortises.LEAST_SHARE * leg.area()),
                together.size() > 1 ? ", or let one piece stand above the other" : ""));
  }

  private static String area(double value) {
    return Writing.with(value, Unit.MM2, 4);
  }

  private List<Bore> bores(int i, StretcherLine side, Rectangle leg) {
    EndFrame frame = frames.get(i);
    int inward = side == StretcherLine.FRONT ? 1 : -1;
    List<Bore> out = new ArrayList<>();
    if (frame.topRail().seat() == Seat.BETWEEN) {
      out.addAll(rail("the top rail", frame.topRail(), leg, inward));
    }
    frame.bottomRail().ifPresent(rail -> out.addAll(rail("the bottom rail", rail, leg, inward)));
    for (Stretcher stretcher : stretchers) {
      if (stretcher.line() == side) {
        if (i + 1 < frames.size()) {
          out.addAll(stretcher(stretcher, leg, 1));
        }
        if (i > 0) {
          out.addAll(stretcher(stretcher, leg, -1));
        }
      }
    }
    out.removeIf(bore -> bore.to() <= bore.from());
    return out;
  }

  private static List<Bore> rail(String by, Rail rail, Rectangle leg, int inward) {
    double depth = rail.depth().mm();
    Joint.Members members = new Joint.Members(depth, rail.thickness().mm(), leg.h(), leg.b());
    double bottom = rail.centreAt().mm() - depth / 2;
    return TenonHole.all(rail.joint().joint(), members).stream()
        .map(
            cut -> {
              double middle = inward * (leg.h() - cut.depth()) / 2;
              Hole hole = Hole.about(cut.offset(), middle, cut.width(), cut.depth());
              double low = bottom + cut.below();
              return new Bore(by, hole, low, low + cut.height());
            })
        .toList();
  }

  private static List<Bore> stretcher(Stretcher stretcher, Rectangle leg, int way) {
    double bottom = stretcher.endCentreMm() - stretcher.endDepthMm() / 2;
    return TenonHole.all(stretcher.joint().joint(), members(stretcher, leg.b(), leg.h())).stream()
        .map(
            cut -> {
              double middle = way * (leg.b() - cut.depth()) / 2;
              Hole hole = Hole.about(middle, cut.offset(), cut.depth(), cut.width());
              double low = bottom + cut.below();
              return new Bore("the " + stretcher.name(), hole, low, low + cut.height());
            })
        .toList();
  }

  private static Joint.Members members(
      Stretcher stretcher, double postDepth, double postThickness) {
    return new Joint.Members(
        stretcher.endDepthMm(), stretcher.thickness().mm(), postDepth, postThickness);
  }

  private static TenonHole holeOf(Stretcher stretcher, double postDepth, double postThickness) {
    return TenonHole.of(stretcher.joint().joint(), members(stretcher, postDepth, postThickness));
  }

  private static boolean screwedFromBehind(Joint joint) {
    return joint instanceof ScrewedButt
        || (joint instanceof Housing housing && housing.screws().isPresent());
  }

  /** The tenons of two bays may not stand in one place; laps and bridles let one piece run on. */
  private void endToEnd(int k, Stretcher stretcher) {
    Joint joint = stretcher.joint().joint();
    if (joint instanceof HalfLap || joint instanceof Bridle) {
      return;
    }
    boolean spine = stretcher.line() == StretcherLine.MIDDLE;
    if (screwedFromBehind(joint)) {
      answers.fault(
          "stretchers[%s].joint".formatted(k),
          "screwed through a middle %s".formatted(spine ? "rail" : "leg"),
          "a screw into the end of one piece is driven from the far face, and there the piece of"
              + " the next bay stands in the way: take a tenon, dowels, bed bolts or a glued housing");
      return;
    }
    EndFrame middle = frames.get(1);
    Rail rail = Layout.railOf(middle, stretcher);
    double room = spine ? rail.thickness().mm() : middle.leg().along().mm();
    double other = spine ? rail.length().mm() : middle.leg().across().mm();
    double depth = holeOf(stretcher, room, other).depth();
    if (2 * depth > room) {
      answers.fault(
          "stretchers[%s].joint".formatted(k),
          "cut %s deep from both sides of a middle %s that is %s thick"
              .formatted(Length.ofMm(depth), spine ? "rail" : "leg", Length.ofMm(room)),
          "at most %s, or the pieces of two bays meet; take a shorter tenon that does not go through"
              .formatted(Length.ofMm(room / 2)));
    }
  }
}
