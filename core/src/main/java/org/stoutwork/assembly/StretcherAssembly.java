package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.EndExtension;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.setting.PostEdges;
import org.stoutwork.quantity.Writing;
import org.stoutwork.section.Rectangle;

/** Stretchers, which run along the bench from end frame to end frame. */
final class StretcherAssembly {

  private final FrameAssembly frames;

  StretcherAssembly(FrameAssembly frames) {
    this.frames = frames;
  }

  void build() {
    for (Stretcher stretcher : frames.bench.stretchers()) {
      for (int bay = 0; bay + 1 < frames.bench.endFrames().size(); bay++) {
        new InBay(stretcher, bay).build();
      }
    }
  }

  private String nameOf(Stretcher stretcher, int bay) {
    return frames.bench.endFrames().size() == 2
        ? stretcher.name()
        : stretcher.name() + ", bay " + (bay + 1);
  }

  /** One stretcher in one bay. */
  private final class InBay {

    private final Stretcher stretcher;
    private final EndFrame left;
    private final EndFrame right;
    private final int bay;
    private final String name;
    private final double z;
    private final double endZ;

    InBay(Stretcher stretcher, int bay) {
      this.stretcher = stretcher;
      this.bay = bay;
      this.left = frames.bench.endFrames().get(bay);
      this.right = frames.bench.endFrames().get(bay + 1);
      this.name = nameOf(stretcher, bay);
      this.z = stretcher.centreAt().mm();
      this.endZ = stretcher.endCentreMm();
    }

    void build() {
      double armLeft = StretcherLines.arm(left, stretcher);
      double armRight = StretcherLines.arm(right, stretcher);
      double from = left.at().mm() + armLeft;
      double to = right.at().mm() - armRight;
      Rectangle section = section(stretcher.depth().mm());
      FrameTimber timber = frames.timbers.apply(stretcher.wood());
      Chain.stuff(frames.model, name, section, timber, timber.density());
      Joiner atLeft = joiner(left);
      Joiner atRight = joiner(right);
      List<Chain.Stop> stops = stops(from, to);
      List<Piece> pieces =
          new Chain(frames.model, name, section)
              .through(
                  stops,
                  from,
                  atLeft.level(new Vec3(armLeft, 0, rise(left))),
                  atRight.level(new Vec3(-armRight, 0, rise(right))),
                  at -> sectionAt(at, from, to),
                  at -> deepened(at, from, to) ? endZ - z : 0);
      place(atLeft, left, pieces.get(0), true);
      place(atRight, right, pieces.get(pieces.size() - 1), false);
      atLeft.boreEnd(name, 0);
      atRight.boreEnd(name, to - from);
      frames.parts.add(
          new Part(name, PartKind.STRETCHER, stretcher.wood(), pieces, List.of(), to - from));
    }

    private Rectangle section(double depth) {
      return new Rectangle(stretcher.thickness().mm(), depth);
    }

    /** The section in the middle of a length: deeper where a piece is glued on. */
    private Rectangle sectionAt(double at, double from, double to) {
      return section(deepened(at, from, to) ? stretcher.endDepthMm() : stretcher.depth().mm());
    }

    private boolean deepened(double at, double from, double to) {
      return stretcher
          .extension()
          .filter(e -> at - from < e.length().mm() || to - at < e.length().mm())
          .isPresent();
    }

    /** How far its end lies above the node that it meets: a rail has its own middle. */
    private double rise(EndFrame frame) {
      return stretcher.line() == StretcherLine.MIDDLE
          ? endZ - Layout.railOf(frame, stretcher).centreAt().mm()
          : 0;
    }

    private List<Chain.Stop> stops(double from, double to) {
      FrameModelBuilder model = frames.model;
      double y = middleY();
      List<Double> between = new ArrayList<>();
      if (Layout.touchesTop(frames.bench, stretcher)) {
        frames.grid.stations().stream()
            .filter(x -> x > from + 1 && x < to - 1)
            .forEach(between::add);
      }
      stretcher
          .extension()
          .map(EndExtension::length)
          .ifPresent(l -> addSteps(between, from, to, l.mm()));
      List<Chain.Stop> stops = new ArrayList<>();
      stops.add(new Chain.Stop(endNode(left, bay), left.at().mm()));
      between.stream()
          .sorted()
          .forEach(
              x -> {
                String node = name + " at " + Writing.fixed(x, 0);
                model.node(node, x, y, z);
                stops.add(new Chain.Stop(node, x));
                if (frames.grid.stations().contains(x)) {
                  frames.stretcherContacts.add(new FrameAssembly.Contact(stretcher, node, x, y, z));
                }
              });
      stops.add(new Chain.Stop(endNode(right, bay + 1), right.at().mm()));
      return stops;
    }

    private void addSteps(List<Double> between, double from, double to, double length) {
      for (double x : new double[] {from + length, to - length}) {
        if (x > from + 1 && x < to - 1 && between.stream().noneMatch(b -> Math.abs(b - x) < 1)) {
          between.add(x);
        }
      }
    }

    private double middleY() {
      return (endY(left) + endY(right)) / 2;
    }

    private double endY(EndFrame frame) {
      return Layout.stretcherY(frames.bench, frame, stretcher.line());
    }

    private String endNode(EndFrame frame, int index) {
      if (stretcher.line() != StretcherLine.MIDDLE) {
        return frames.leg(stretcher.line(), index).level(endZ);
      }
      return Rails.node(railName(frame), frames.bench.top().width().mm() / 2);
    }

    private String railName(EndFrame frame) {
      boolean top = Layout.railOf(frame, stretcher).equals(frame.topRail());
      return frame.name() + (top ? " top rail" : " bottom rail");
    }

    private Joiner joiner(EndFrame frame) {
      double depth = stretcher.endDepthMm();
      double thickness = stretcher.thickness().mm();
      if (stretcher.line() == StretcherLine.MIDDLE) {
        Rail rail = Layout.railOf(frame, stretcher);
        Joint.Members members =
            new Joint.Members(depth, thickness, rail.thickness().mm(), rail.length().mm());
        return new Joiner(
            frames,
            stretcher.joint(),
            members,
            stretcher.wood(),
            rail.wood(),
            Joiner.Reach.BOTH_WAYS,
            List.of(),
            inTheMiddle(frame),
            edges(rail, depth));
      }
      Joint.Members members =
          new Joint.Members(depth, thickness, frame.leg().along().mm(), frame.leg().across().mm());
      return new Joiner(
          frames,
          stretcher.joint(),
          members,
          stretcher.wood(),
          frame.leg().wood(),
          Joiner.Reach.of(frames.bench, frame, endZ, depth),
          new CrossBores(frames.bench, frame).ofStretcher(stretcher),
          inTheMiddle(frame),
          PostEdges.NONE);
    }

    /** How far a rail reaches below and above the end of a middle stretcher. */
    private PostEdges edges(Rail rail, double depth) {
      double lift = endZ - rail.centreAt().mm();
      double spare = (rail.depth().mm() - depth) / 2;
      return new PostEdges(spare + lift, spare - lift);
    }

    /** Whether the stretcher of another bay meets this frame from its other side. */
    private boolean inTheMiddle(EndFrame frame) {
      List<EndFrame> all = frames.bench.endFrames();
      return !frame.equals(all.get(0)) && !frame.equals(all.get(all.size() - 1));
    }

    private void place(Joiner joiner, EndFrame frame, Piece piece, boolean atStart) {
      int sign = atStart ? 1 : -1;
      int index = atStart ? bay : bay + 1;
      if (stretcher.line() == StretcherLine.MIDDLE) {
        Rail rail = Layout.railOf(frame, stretcher);
        joiner.spot(PartKind.STRETCHER, name, railName(frame), piece.member(), atStart);
        double front = Layout.railFront(frames.bench, frame, rail);
        double at = frames.bench.top().width().mm() / 2 - front;
        double lift = endZ - rail.centreAt().mm();
        joiner.mortiseThroughRail(railName(frame), at, sign, lift);
        return;
      }
      LegLines leg = frames.leg(stretcher.line(), index);
      joiner.spot(PartKind.STRETCHER, name, leg.name(), piece.member(), atStart);
      joiner.mortiseAlong(leg.name(), endZ - Layout.legBottom(frame), sign);
    }
  }
}
