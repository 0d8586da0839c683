package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.quantity.Length;

/**
 * Refuses bolts of rails and stretchers that would meet in a leg: both run in its middle, at right
 * angles. Bolts that come into a middle leg from both bays on one axis are one threaded rod.
 */
final class BoltsMeeting {

  /** Wood that must stay between two bores, so that no drill runs into the other; mm. */
  private static final double LEAST_BETWEEN = 5;

  private final Answers answers;

  BoltsMeeting(Answers answers) {
    this.answers = answers;
  }

  /** One bolt: whose it is, its height above the floor and its bore, mm. */
  private record Axis(String by, double height, double bore) {}

  void check(List<EndFrame> frames, List<Stretcher> stretchers) {
    for (EndFrame frame : frames) {
      List<Axis> across = across(frame);
      for (int k = 0; k < stretchers.size(); k++) {
        Optional<BenchFault> fault = meeting(k, stretchers.get(k), frame, across);
        if (fault.isPresent()) {
          answers.fault(fault.get());
          return;
        }
      }
    }
  }

  private static List<Axis> across(EndFrame frame) {
    List<Axis> out = new ArrayList<>();
    if (frame.topRail().seat() == Seat.BETWEEN) {
      out.addAll(ofRail("top rail", frame, frame.topRail()));
    }
    frame.bottomRail().ifPresent(rail -> out.addAll(ofRail("bottom rail", frame, rail)));
    return out;
  }

  private static List<Axis> ofRail(String words, EndFrame frame, Rail rail) {
    Joint.Members members =
        new Joint.Members(
            rail.depth().mm(),
            rail.thickness().mm(),
            frame.leg().across().mm(),
            frame.leg().along().mm());
    double bottom = rail.centreAt().mm() - rail.depth().mm() / 2;
    return axes(words, rail.joint().joint(), members, bottom);
  }

  private static List<Axis> axes(String by, Joint joint, Joint.Members members, double bottom) {
    return joint instanceof BoltedTenon bolted
        ? bolted.boltHeights(members).stream()
            .map(height -> new Axis(by, bottom + height, bolted.bore()))
            .toList()
        : List.of();
  }

  private static Optional<BenchFault> meeting(
      int k, Stretcher stretcher, EndFrame frame, List<Axis> across) {
    if (stretcher.line() == StretcherLine.MIDDLE) {
      return Optional.empty();
    }
    Joint.Members members =
        new Joint.Members(
            stretcher.endDepthMm(),
            stretcher.thickness().mm(),
            frame.leg().along().mm(),
            frame.leg().across().mm());
    double bottom = stretcher.endCentreMm() - stretcher.endDepthMm() / 2;
    for (Axis own : axes(stretcher.name(), stretcher.joint().joint(), members, bottom)) {
      for (Axis other : across) {
        double apart = Math.abs(own.height() - other.height());
        double least = (own.bore() + other.bore()) / 2 + LEAST_BETWEEN;
        if (apart < least) {
          return Optional.of(fault(k, frame, own, other, apart, least));
        }
      }
    }
    return Optional.empty();
  }

  private static BenchFault fault(
      int k, EndFrame frame, Axis own, Axis other, double apart, double least) {
    return BenchFault.of(
        "stretchers[%s]".formatted(k),
        "such that a bolt of the %s at %s and one of the %s at %s meet in a leg of the %s end frame: their middles are %s apart"
            .formatted(
                own.by(),
                Length.ofMm(own.height()),
                other.by(),
                Length.ofMm(other.height()),
                frame.name(),
                Length.ofMm(apart)),
        "at least %s apart, bores of %s and %s with %s of wood between: move one piece up or down by %s, or change the spacing of its bolts"
            .formatted(
                Length.ofMm(least),
                Length.ofMm(own.bore()),
                Length.ofMm(other.bore()),
                Length.ofMm(LEAST_BETWEEN),
                Length.ofMm(least - apart)));
  }
}
