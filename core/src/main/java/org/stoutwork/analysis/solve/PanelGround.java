package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Panel;

/** Sums up what supported lines do to a panel. */
final class PanelGround {
  private PanelGround() {}

  /** Reactions along the normal, sorted by support. */
  static List<PanelReaction> byLine(
      Panel panel, PanelHolds holds, double[] reactions, boolean[] open) {
    List<PanelReaction> lines = new ArrayList<>();
    for (int s = 0; s < panel.supports().size(); s++) {
      List<PanelReaction.Part> parts = new ArrayList<>();
      double sum = 0;
      for (int h = 0; h < reactions.length; h++) {
        PanelHolds.Hold hold = holds.holds().get(h);
        if (hold.support() == s) {
          parts.add(new PanelReaction.Part(hold.at(), hold.reach(), reactions[h], open[h]));
          sum += reactions[h];
        }
      }
      lines.add(new PanelReaction(panel.supports().get(s), sum, parts));
    }
    return lines;
  }
}
