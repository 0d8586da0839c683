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
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.quantity.Length;

/**
 * Refuses a half-lap or bridle whose piece would stand where another piece stands in the same leg:
 * it takes the whole depth of the leg and cannot be shortened like a tenon. Rail and stretcher
 * cross in a leg; the pieces of two bays follow one line, so a lapped or bridled one runs on
 * through a middle leg as one piece and is cut out of it once.
 */
final class LapsMeeting {

  private final Answers answers;

  LapsMeeting(Answers answers) {
    this.answers = answers;
  }

  /**
   * A piece in a leg.
   *
   * @param by whose it is
   * @param joint how it is made
   * @param side of the leg along the piece, mm
   * @param hole it needs
   * @param from height of its lower end above the floor, mm
   * @param fromBothSides whether a like piece enters from the other face too
   */
  private record Member(
      String by, Joint joint, double side, TenonHole hole, double from, boolean fromBothSides) {

    double to() {
      return from + hole.height();
    }

    boolean whole() {
      return joint instanceof HalfLap || joint instanceof Bridle;
    }

    String words() {
      return (joint instanceof HalfLap ? "half-lap" : joint instanceof Bridle ? "bridle" : "joint")
          + " of "
          + by;
    }

    /**
     * How deep a piece that crosses this one may go, whichever face this one is lapped on; mm.
     *
     * @param other the crossing piece, along which the leg measures its own side
     */
    double room(Member other) {
      if (other.whole() || (joint instanceof HalfLap && other.fromBothSides())) {
        return 0;
      }
      double left = other.side() - hole.width();
      return joint instanceof HalfLap ? left : left / 2;
    }
  }

  void check(List<EndFrame> frames, List<Stretcher> stretchers) {
    for (int i = 0; i < frames.size(); i++) {
      List<Member> across = across(frames.get(i));
      boolean middle = i > 0 && i + 1 < frames.size();
      for (int k = 0; k < stretchers.size(); k++) {
        Optional<BenchFault> fault = fault(k, stretchers.get(k), frames.get(i), middle, across);
        if (fault.isPresent()) {
          answers.fault(fault.get());
          return;
        }
      }
    }
  }

  private static boolean ofWood(Joint joint) {
    return joint instanceof MortiseAndTenon
        || joint instanceof BoltedTenon
        || joint instanceof LooseWedgeTenon
        || joint instanceof Housing
        || joint instanceof HalfLap
        || joint instanceof Bridle;
  }

  private static List<Member> across(EndFrame frame) {
    List<Member> out = new ArrayList<>();
    if (frame.topRail().seat() == Seat.BETWEEN) {
      rail("the top rail", frame, frame.topRail()).ifPresent(out::add);
    }
    frame.bottomRail().flatMap(rail -> rail("the bottom rail", frame, rail)).ifPresent(out::add);
    return out;
  }

  private static Optional<Member> rail(String by, EndFrame frame, Rail rail) {
    Joint.Members members =
        new Joint.Members(
            rail.depth().mm(),
            rail.thickness().mm(),
            frame.leg().across().mm(),
            frame.leg().along().mm());
    return member(by, rail.joint().joint(), members, rail.centreAt().mm(), false);
  }

  private static Optional<Member> member(
      String by, Joint joint, Joint.Members members, double centre, boolean bothSides) {
    if (!ofWood(joint)) {
      return Optional.empty();
    }
    TenonHole hole = TenonHole.of(joint, members);
    double from = centre - members.railDepth() / 2 + hole.below();
    return Optional.of(new Member(by, joint, members.postDepth(), hole, from, bothSides));
  }

  private static Optional<BenchFault> fault(
      int k, Stretcher stretcher, EndFrame frame, boolean middle, List<Member> across) {
    if (stretcher.line() == StretcherLine.MIDDLE) {
      return Optional.empty();
    }
    Joint.Members members =
        new Joint.Members(
            stretcher.endDepthMm(),
            stretcher.thickness().mm(),
            frame.leg().along().mm(),
            frame.leg().across().mm());
    return member(
            "the " + stretcher.name(),
            stretcher.joint().joint(),
            members,
            stretcher.endCentreMm(),
            middle)
        .flatMap(own -> across.stream().flatMap(o -> meeting(own, o).stream()).findFirst())
        .map(met -> fault(k, met, frame));
  }

  /** Two pieces that need one place, the one that takes the whole depth of the leg first. */
  private record Met(Member whole, Member other) {}

  private static Optional<Met> meeting(Member own, Member other) {
    if (!(own.from() < other.to() && other.from() < own.to())) {
      return Optional.empty();
    }
    if (own.whole() && other.hole().depth() > own.room(other)) {
      return Optional.of(new Met(own, other));
    }
    return other.whole() && own.hole().depth() > other.room(own)
        ? Optional.of(new Met(other, own))
        : Optional.empty();
  }

  private static BenchFault fault(int k, Met met, EndFrame frame) {
    Member whole = met.whole();
    Member other = met.other();
    double room = whole.room(other);
    double up = Math.min(whole.to() - other.from(), other.to() - whole.from());
    return BenchFault.of(
        "stretchers[%s].joint".formatted(k),
        "such that the %s, which takes the whole depth of a leg of the %s end frame, stands in the way of the %s, which goes %s into it from %s above the floor"
            .formatted(
                whole.words(),
                frame.name(),
                other.words(),
                Length.ofMm(other.hole().depth()),
                Length.ofMm(Math.max(whole.from(), other.from()))),
        room > 0
            ? "at most %s deep there, or move one piece up or down by %s"
                .formatted(Length.ofMm(room), Length.ofMm(up))
            : "pieces that cross must be clear of one another: move one up or down by %s, or take a tenon for one of them"
                .formatted(Length.ofMm(up)));
  }
}
