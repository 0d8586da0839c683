package org.stoutwork.assembly;

import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;

/** Where stretchers begin and end. */
final class StretcherLines {

  private StretcherLines() {}

  /** From the axis of what a stretcher meets to its shoulder, along the bench, mm. */
  static double arm(EndFrame frame, Stretcher stretcher) {
    return stretcher.line() == StretcherLine.MIDDLE
        ? Layout.railOf(frame, stretcher).thickness().mm() / 2
        : frame.leg().along().mm() / 2;
  }

  /** Clear length in a bay, from shoulder to shoulder, mm. */
  static double clear(Bench bench, Stretcher stretcher, int bay) {
    EndFrame left = bench.endFrames().get(bay);
    EndFrame right = bench.endFrames().get(bay + 1);
    return right.at().mm() - left.at().mm() - arm(left, stretcher) - arm(right, stretcher);
  }
}
