package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * Where the parts of a bench stand, worked out from its sizes. In mm; X from the left end of the
 * top, Y from its front edge, Z from the floor.
 */
public final class Layout {

  private Layout() {}

  /** Height of the underside of the top. */
  public static double underside(Bench bench) {
    return bench.height().mm() - bench.top().thicknessMm();
  }

  /** Place of a front leg's centre across the bench. */
  public static double frontLegY(EndFrame frame) {
    return frame.frontInset().mm() + frame.leg().across().mm() / 2;
  }

  /** Place of a back leg's centre across the bench. */
  public static double backLegY(EndFrame frame, Length width) {
    return width.mm() - frame.backInset().mm() - frame.leg().across().mm() / 2;
  }

  /** Place of a back leg's centre across the bench. */
  public static double backLegY(Bench bench, EndFrame frame) {
    return backLegY(frame, bench.top().width());
  }

  /** Height at which the legs begin: on the floor, or on their foot. */
  public static double legBottom(EndFrame frame) {
    return frame.foot().map(foot -> foot.depth().mm()).orElse(0.0);
  }

  /**
   * Height at which the legs end: under the top, a little lower where the rail is left proud of
   * them, or under the rail that lies over them.
   */
  public static double legTop(Bench bench, EndFrame frame) {
    Rail rail = frame.topRail();
    return rail.seat() == Seat.OVER
        ? rail.centreAt().mm() - rail.depth().mm() / 2
        : underside(bench) - rail.proud().mm();
  }

  /** Whether a stretcher touches the underside of the top. */
  public static boolean touchesTop(Bench bench, Stretcher stretcher) {
    double edge = stretcher.centreAt().mm() + stretcher.depth().mm() / 2;
    return underside(bench) - edge < TOUCHING;
  }

  /** Gap below which two faces count as touching, mm. */
  public static final double TOUCHING = 1.0;

  /** Distance across the bench between the outer faces of the feet or legs of a frame. */
  public static double standFront(Bench bench, EndFrame frame) {
    return frame
        .foot()
        .map(foot -> footMiddle(bench, frame) - foot.length().mm() / 2)
        .orElse(frame.frontInset().mm());
  }

  /** Place of the outer face of the back leg or foot. */
  public static double standBack(Bench bench, EndFrame frame) {
    return frame
        .foot()
        .map(foot -> footMiddle(bench, frame) + foot.length().mm() / 2)
        .orElse(bench.top().width().mm() - frame.backInset().mm());
  }

  /** Place across the bench of the middle of a stretcher at one of the end frames. */
  public static double stretcherY(Bench bench, EndFrame frame, StretcherLine line) {
    return switch (line) {
      case FRONT -> frontLegY(frame);
      case BACK -> backLegY(bench, frame);
      case MIDDLE -> bench.top().width().mm() / 2;
    };
  }

  /** Place across the bench where a rail begins: at its front end, or at its front shoulder. */
  public static double railFront(Bench bench, EndFrame frame, Rail rail) {
    return footMiddle(bench, frame) - rail.length().mm() / 2;
  }

  /** Middle of a foot across the bench: half-way between the legs. */
  public static double footMiddle(Bench bench, EndFrame frame) {
    return (frontLegY(frame) + backLegY(bench, frame)) / 2;
  }

  /** The rail of a frame whose middle is nearest to a height. */
  public static Rail railNear(EndFrame frame, double z) {
    Rail top = frame.topRail();
    return frame
        .bottomRail()
        .filter(b -> Math.abs(b.centreAt().mm() - z) < Math.abs(top.centreAt().mm() - z))
        .orElse(top);
  }

  /**
   * The rail of a frame that a middle stretcher meets: the one nearest to the middle of its end.
   */
  public static Rail railOf(EndFrame frame, Stretcher stretcher) {
    return railNear(frame, stretcher.endCentreMm());
  }

  /** The longest distance between the middles of neighbouring end frames. */
  public static double longestBay(Bench bench) {
    double longest = 0;
    for (int i = 1; i < bench.endFrames().size(); i++) {
      double bay = bench.endFrames().get(i).at().mm() - bench.endFrames().get(i - 1).at().mm();
      longest = Math.max(longest, bay);
    }
    return longest;
  }
}
