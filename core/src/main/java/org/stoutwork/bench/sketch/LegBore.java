package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;

/**
 * A bore right through a leg: of a bolt, which runs with the piece it holds in the middle of the
 * leg, or of a peg, which runs across that piece beside its shoulder.
 *
 * @param by the piece it belongs to
 * @param bolt whether a bolt runs in it, or a peg
 * @param alongBench whether it runs along the bench, or across it
 * @param offset of its axis from the middle of the leg, in plan, mm
 * @param height of its axis above the floor, mm
 * @param diameter mm
 */
record LegBore(
    String by, boolean bolt, boolean alongBench, double offset, double height, double diameter) {

  /** Between the axes where they come nearest, mm; bores at right angles cross in plan. */
  double apart(LegBore other) {
    double up = Math.abs(height - other.height);
    return alongBench == other.alongBench ? Math.hypot(offset - other.offset, up) : up;
  }

  /** By how much one of two must move up or down to be so far apart, mm. */
  double toMove(LegBore other, double least) {
    double beside = alongBench == other.alongBench ? offset - other.offset : 0;
    double up = Math.abs(height - other.height);
    return Math.sqrt(Math.max(0, least * least - beside * beside)) - up;
  }

  /** All bores of rails and stretchers in the legs of a frame on one side. */
  static List<LegBore> of(EndFrame frame, List<Stretcher> stretchers, StretcherLine side) {
    double along = frame.leg().along().mm();
    double across = frame.leg().across().mm();
    List<LegBore> out = new ArrayList<>();
    if (frame.topRail().seat() == Seat.BETWEEN) {
      out.addAll(ofRail("top rail", frame.topRail(), across, along));
    }
    frame.bottomRail().ifPresent(rail -> out.addAll(ofRail("bottom rail", rail, across, along)));
    for (Stretcher s : stretchers) {
      if (s.line() == side) {
        Joint.Members members =
            new Joint.Members(s.endDepthMm(), s.thickness().mm(), along, across);
        double bottom = s.endCentreMm() - s.endDepthMm() / 2;
        out.addAll(of(s.name(), s.joint().joint(), members, bottom, true));
      }
    }
    return out;
  }

  private static List<LegBore> ofRail(String by, Rail rail, double across, double along) {
    Joint.Members members =
        new Joint.Members(rail.depth().mm(), rail.thickness().mm(), across, along);
    double bottom = rail.centreAt().mm() - rail.depth().mm() / 2;
    return of(by, rail.joint().joint(), members, bottom, false);
  }

  private static List<LegBore> of(
      String by, Joint joint, Joint.Members members, double bottom, boolean alongBench) {
    if (joint instanceof BoltedTenon bolted) {
      return bolted.boltHeights(members).stream()
          .map(h -> new LegBore(by, true, alongBench, 0, bottom + h, bolted.bore()))
          .toList();
    }
    if (joint instanceof MortiseAndTenon tenon && tenon.fit() instanceof Fit.Pegged pegged) {
      double middle = bottom + tenon.shoulderBelow() + tenon.height() / 2;
      return pegs(by, pegged, members, middle, alongBench);
    }
    if (joint instanceof Bridle bridle && bridle.fit() instanceof Fit.Pegged pegged) {
      return pegs(by, pegged, members, bottom + members.railDepth() / 2, alongBench);
    }
    return List.of();
  }

  /** Pegs of a rail run along the bench, those of a stretcher across it. */
  private static List<LegBore> pegs(
      String by, Fit.Pegged pegged, Joint.Members members, double middle, boolean alongBench) {
    double offset = members.postDepth() / 2 - pegged.fromShoulder();
    return IntStream.range(0, pegged.pegs())
        .mapToObj(
            i -> {
              double up = (i - (pegged.pegs() - 1) / 2.0) * pegged.spacing();
              return new LegBore(
                  by, false, !alongBench, offset, middle + up, pegged.peg().diameter());
            })
        .toList();
  }

  /** What runs in it. */
  String words() {
    return bolt ? "bolt" : "peg";
  }
}
