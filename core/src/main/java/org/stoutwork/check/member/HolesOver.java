package org.stoutwork.check.member;

import java.util.List;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;

/**
 * Dog holes that stand over what carries the top.
 *
 * @param bench they are bored in
 */
record HolesOver(Bench bench) {

  /** Says how many holes stand over legs, top rails or stretchers, where no dog goes through. */
  String words(DogHoles row) {
    int count = 0;
    for (int i = 0; i < row.count(); i++) {
      double x = row.atMm(i);
      if (overStretcher(row, x)
          || bench.endFrames().stream().anyMatch(frame -> over(row, x, frame))) {
        count++;
      }
    }
    return count == 0
        ? ""
        : "%s of %s holes stand over a leg, a top rail or a stretcher: a dog goes no deeper there than the top."
            .formatted(count, row.count());
  }

  private boolean overStretcher(DogHoles row, double x) {
    List<EndFrame> frames = bench.endFrames();
    boolean within = x > frames.get(0).at().mm() && x < frames.get(frames.size() - 1).at().mm();
    return within
        && bench.stretchers().stream()
            .filter(s -> Layout.touchesTop(bench, s))
            .anyMatch(
                s ->
                    Math.abs(
                            Layout.stretcherY(bench, frames.get(0), s.line())
                                - row.fromFront().mm())
                        < (s.thickness().mm() + row.size().mm()) / 2);
  }

  private boolean over(DogHoles row, double x, EndFrame frame) {
    double half = row.size().mm() / 2;
    double y = row.fromFront().mm();
    double beside = Math.abs(x - frame.at().mm()) - half;
    double front = Layout.frontLegY(frame);
    double back = Layout.backLegY(bench, frame);
    double leg = frame.leg().across().mm() / 2 + half;
    boolean overLeg =
        beside < frame.leg().along().mm() / 2
            && (Math.abs(y - front) < leg || Math.abs(y - back) < leg);
    boolean overRail =
        beside < frame.topRail().thickness().mm() / 2 && y + half > front && y - half < back;
    return overLeg || overRail;
  }
}
