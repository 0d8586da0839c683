package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopHeld;

/**
 * Holes and slots for the top's screws, through the whole depth of the rail that they hold it on.
 */
final class TopScrewHoles {

  private TopScrewHoles() {}

  /** What they take out of the top rail of a frame, from its front end or shoulder. */
  static List<Mortise> in(Bench bench, EndFrame frame) {
    TopFixing fixing = bench.top().fixing();
    Rail rail = frame.topRail();
    ScrewRow row = ScrewRow.of(bench, frame);
    double start = Layout.railFront(bench, frame, rail);
    double still = row.still(fixing.held());
    List<Mortise> out = new ArrayList<>();
    for (int i = 0; i < row.count(); i++) {
      boolean holds =
          fixing.held() != TopHeld.NOWHERE && Math.abs(row.place(i) - still) < row.pitch() / 4;
      double wide = holds ? fixing.screwDiameter().mm() : fixing.hole().width();
      double half = (holds ? fixing.screwDiameter().mm() : fixing.hole().length()) / 2;
      double at = row.place(i) - start;
      out.add(
          new Mortise(
              "screws of the top", at, wide, 0, rail.depth().mm(), 0, at - half, at + half));
    }
    return out;
  }
}
