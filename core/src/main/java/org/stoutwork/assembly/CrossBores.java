package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.setting.CrossBore;

/**
 * Bores of bolts that run through a leg at right angles to a joint in it: those of stretchers cross
 * the rails, those of rails cross the stretchers. Bolts run in the middle of the leg.
 */
final class CrossBores {

  private final Bench bench;
  private final EndFrame frame;

  CrossBores(Bench bench, EndFrame frame) {
    this.bench = bench;
    this.frame = frame;
  }

  /** What crosses a rail of the frame in its leg on one side. */
  List<CrossBore> ofRail(Rail rail, StretcherLine side) {
    double low = rail.centreAt().mm() - rail.depth().mm() / 2;
    double along = frame.leg().along().mm();
    double across = frame.leg().across().mm();
    List<CrossBore> out = new ArrayList<>();
    for (Stretcher s : bench.stretchers()) {
      if (s.line() == side) {
        double bottom = s.endCentreMm() - s.endDepthMm() / 2 - low;
        Joint.Members members =
            new Joint.Members(s.endDepthMm(), s.thickness().mm(), along, across);
        out.addAll(bores(s.joint().joint(), members, bottom, across / 2));
      }
    }
    return List.copyOf(out);
  }

  /** What crosses a stretcher in the leg on its line. */
  List<CrossBore> ofStretcher(Stretcher stretcher) {
    double low = stretcher.endCentreMm() - stretcher.endDepthMm() / 2;
    double along = frame.leg().along().mm();
    double across = frame.leg().across().mm();
    List<Rail> rails = new ArrayList<>();
    if (frame.topRail().seat() == Seat.BETWEEN) {
      rails.add(frame.topRail());
    }
    frame.bottomRail().ifPresent(rails::add);
    List<CrossBore> out = new ArrayList<>();
    for (Rail rail : rails) {
      double bottom = rail.centreAt().mm() - rail.depth().mm() / 2 - low;
      Joint.Members members =
          new Joint.Members(rail.depth().mm(), rail.thickness().mm(), across, along);
      out.addAll(bores(rail.joint().joint(), members, bottom, along / 2));
    }
    return List.copyOf(out);
  }

  private static List<CrossBore> bores(
      Joint joint, Joint.Members members, double bottom, double fromShoulder) {
    if (!(joint instanceof BoltedTenon bolted)) {
      return List.of();
    }
    return bolted.boltHeights(members).stream()
        .map(height -> new CrossBore(bolted.bore(), bottom + height, fromShoulder))
        .toList();
  }
}
