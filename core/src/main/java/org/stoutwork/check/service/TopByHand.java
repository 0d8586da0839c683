package org.stoutwork.check.service;

import org.stoutwork.action.Action;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Inquiry;
import org.stoutwork.working.Pad;

/**
 * The top as one simple beam over the longest bay: what a pocket calculator gives, to hold beside
 * the analysis. It leaves out the run of the top beyond its supports, stretchers under it, and the
 * way a point load presses one strip more than another; so it is a measure of size, not of
 * rightness.
 */
final class TopByHand {

  private final Inquiry inquiry;

  TopByHand(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /** Writes the sag by hand beside that of the analysis. Tops of several layers are left out. */
  void compare(Action action, Pad pad) {
    Bench bench = inquiry.bench();
    if (bench.top().layers().size() > 1) {
      return;
    }
    TopLayer layer = bench.top().layers().get(0);
    FrameTimber timber = inquiry.timbers().get(layer.wood());
    double e = layer.grain() == Grain.ALONG ? timber.e() : timber.eAcross();
    double g = layer.grain() == Grain.ALONG ? timber.g() : timber.gAcross();
    double b = bench.top().width().mm();
    double h = layer.thickness().mm();
    double bay = Layout.longestBay(bench);
    pad.remark(
        "By hand, for comparison: a simple beam leaves out overhangs, stretchers under the top and"
            + " the narrowness of the load.");
    if (action instanceof Action.SpreadOnTop) {
      pad.take(SagFormulas.SPREAD, action.force() / bench.top().length().mm(), bay, e, g, b, h);
    } else {
      pad.take(SagFormulas.POINT, action.force(), bay, e, g, b, h);
    }
  }
}
