package org.stoutwork.bench.sketch;

import java.util.List;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.quantity.Length;

/**
 * Refuses middle stretchers that miss their rails. The end may be deeper than the rail, but what
 * joins the two, tenon, bolts, dowels or screws, must lie within its depth, and where the whole end
 * is let in, all of it.
 */
final class MiddleInRail {

  private static final double SLACK = 1e-6;

  private final Answers answers;

  MiddleInRail(Answers answers) {
    this.answers = answers;
  }

  /**
   * What is taken of the depth of an end.
   *
   * @param words what takes it
   * @param from above the lower edge of the end, mm
   * @param to above the lower edge of the end, mm
   */
  private record Taken(String words, double from, double to) {}

  void check(int i, Stretcher stretcher, List<EndFrame> frames) {
    if (stretcher.line() != StretcherLine.MIDDLE) {
      return;
    }
    for (EndFrame frame : frames) {
      Rail rail = Layout.railOf(frame, stretcher);
      double off = Math.abs(rail.centreAt().mm() - stretcher.endCentreMm());
      if (off > rail.depth().mm() / 2) {
        answers.fault(
            "stretchers[%s]".formatted(i),
            "a middle stretcher with the middle of its end %s above the floor"
                .formatted(Length.ofMm(stretcher.endCentreMm())),
            "it must meet a rail; the nearest of the %s end frame has its middle at %s"
                .formatted(frame.name(), rail.centreAt()));
      } else {
        inside(i, stretcher, frame, rail);
      }
    }
  }

  private void inside(int i, Stretcher stretcher, EndFrame frame, Rail rail) {
    Joint.Members members =
        new Joint.Members(
            stretcher.endDepthMm(),
            stretcher.thickness().mm(),
            rail.thickness().mm(),
            rail.length().mm());
    Taken taken = taken(stretcher.joint().joint(), members);
    double low = stretcher.endCentreMm() - stretcher.endDepthMm() / 2;
    double bottom = rail.centreAt().mm() - rail.depth().mm() / 2;
    double top = bottom + rail.depth().mm();
    if (low + taken.from() >= bottom - SLACK && low + taken.to() <= top + SLACK) {
      return;
    }
    answers.fault(
        "stretchers[%s].joint".formatted(i),
        "such that %s would reach from %s to %s above the floor"
            .formatted(
                taken.words(), Length.ofMm(low + taken.from()), Length.ofMm(low + taken.to())),
        "the %s rail of the %s end frame reaches from %s to %s, and the joint must lie within it: move the stretcher, or make it or its joint less deep"
            .formatted(
                rail.equals(frame.topRail()) ? "top" : "bottom",
                frame.name(),
                Length.ofMm(bottom),
                Length.ofMm(top)));
  }

  private static Taken taken(Joint joint, Joint.Members members) {
    if (joint instanceof DowelledButt butt) {
      double half = butt.dowel().diameter() / 2;
      double last = butt.edge() + (butt.count() - 1) * butt.spacing();
      return new Taken("its dowels", butt.edge() - half, last + half);
    }
    if (joint instanceof ScrewedButt butt) {
      double half = butt.screws().screw().diameter() / 2;
      List<Double> heights = butt.screws().heights(members.railDepth());
      return new Taken("its screws", heights.get(0) - half, heights.get(heights.size() - 1) + half);
    }
    List<TenonHole> holes = TenonHole.all(joint, members);
    return new Taken(
        words(joint),
        holes.stream().mapToDouble(TenonHole::below).min().orElse(0),
        holes.stream().mapToDouble(h -> h.below() + h.height()).max().orElse(0));
  }

  private static String words(Joint joint) {
    if (joint instanceof BoltedTenon) {
      return "its tenon and bolts";
    }
    return joint instanceof MortiseAndTenon || joint instanceof LooseWedgeTenon
        ? "its tenon"
        : "its end";
  }
}
