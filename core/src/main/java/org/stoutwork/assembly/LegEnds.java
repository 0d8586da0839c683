package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.joint.Joint;

/** What the lower and upper ends of the legs of one end frame are joined to. */
final class LegEnds {

  private final FrameAssembly frames;
  private final EndFrame frame;
  private final Optional<Joiner> foot;
  private final Optional<Joiner> head;

  LegEnds(FrameAssembly frames, int index) {
    this.frames = frames;
    this.frame = frames.bench.endFrames().get(index);
    this.foot = frame.foot().map(this::footJoiner);
    Rail rail = frame.topRail();
    this.head = rail.seat() == Seat.OVER ? Optional.of(headJoiner(rail)) : Optional.empty();
  }

  private Joiner footJoiner(Foot f) {
    Joint.Members members = members(f.depth().mm(), f.thickness().mm());
    return new Joiner(
        frames, f.joint(), members, frame.leg().wood(), f.wood(), Joiner.Reach.BOTH_WAYS);
  }

  private Joiner headJoiner(Rail rail) {
    Joint.Members members = members(rail.depth().mm(), rail.thickness().mm());
    return new Joiner(
        frames, rail.joint(), members, frame.leg().wood(), rail.wood(), Joiner.Reach.BOTH_WAYS);
  }

  private Joint.Members members(double postDepth, double postThickness) {
    return new Joint.Members(
        frame.leg().across().mm(), frame.leg().along().mm(), postDepth, postThickness);
  }

  private String footName() {
    return frame.name() + " foot";
  }

  private String railName() {
    return frame.name() + " top rail";
  }

  List<Chain.Stop> stops(LegLines line) {
    List<Chain.Stop> stops = new ArrayList<>(line.stops());
    if (foot.isPresent()) {
      double z = Layout.legBottom(frame);
      stops.add(0, new Chain.Stop(Rails.node(footName(), line.y()), z));
    }
    if (head.isPresent()) {
      double z = Layout.legTop(frames.bench, frame);
      stops.add(new Chain.Stop(Rails.node(railName(), line.y()), z));
    }
    return stops;
  }

  MemberEnd start() {
    return foot.map(j -> j.upright(new Vec3(0, 0, frame.foot().get().depth().mm() / 2)))
        .orElse(MemberEnd.RIGID);
  }

  MemberEnd end() {
    return head.map(j -> j.upright(new Vec3(0, 0, -frame.topRail().depth().mm() / 2)))
        .orElse(MemberEnd.RIGID);
  }

  void record(LegLines line, List<Piece> pieces) {
    foot.ifPresent(
        j -> {
          j.spot(PartKind.LEG, line.name(), footName(), pieces.get(0).member(), true);
          double from =
              Layout.footMiddle(frames.bench, frame)
                  - (frame.foot().get().length().mm() - frame.foot().get().pad().mm()) / 2;
          j.mortiseUpright(footName(), line.y() - from, 1);
          j.boreUpright(line.name(), 0);
        });
    head.ifPresent(
        j -> {
          String last = pieces.get(pieces.size() - 1).member();
          j.spot(PartKind.LEG, line.name(), railName(), last, false);
          double from = Layout.footMiddle(frames.bench, frame) - frame.topRail().length().mm() / 2;
          j.mortiseUpright(railName(), line.y() - from, -1);
          j.boreUpright(line.name(), Layout.legTop(frames.bench, frame) - Layout.legBottom(frame));
        });
  }
}
