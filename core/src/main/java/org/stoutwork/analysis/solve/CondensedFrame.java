package org.stoutwork.analysis.solve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;

/** A frame with a {@link CondensedPanel} tied to it. Immutable. */
public final class CondensedFrame {
  private final CondensedPanel panel;
  private final PreparedFrame frame;

  private CondensedFrame(CondensedPanel panel, PreparedFrame frame) {
    this.panel = panel;
    this.frame = frame;
  }

  /**
   * Joins a panel to a frame.
   *
   * @throws IllegalArgumentException when a tie names an unknown node
   * @throws IllegalStateException naming what is loose
   */
  public static CondensedFrame of(FrameModel model, CondensedPanel panel) {
    CondensedPanel.Placed placed = new CondensedPanel.Placed(panel, model.nodes());
    return new CondensedFrame(panel, FrameSolver.prepare(model, List.of(placed)).prepared());
  }

  /**
   * The same panel on the same frame with other members of the same names between the same nodes,
   * other joints for example; costs a numeric factorisation only.
   *
   * @throws IllegalStateException naming what is loose
   */
  public CondensedFrame withMembers(Map<String, Member> members) {
    return new CondensedFrame(panel, frame.withMembers(members).prepared());
  }

  /** Solves one load case. */
  public Solution solve(LoadCase loadCase) {
    return solve(Combination.of(loadCase));
  }

  /**
   * Solves a combination.
   *
   * @throws IllegalStateException when no state of the contacts is in equilibrium
   */
  public Solution solve(Combination combination) {
    return new Solution(combination, frame.solve(combination).result());
  }

  /** Solves a combination; empty when no state of the contacts is in equilibrium. */
  public Optional<Solution> find(Combination combination) {
    return frame.solve(combination) instanceof FrameResult result
        ? Optional.of(new Solution(combination, result))
        : Optional.empty();
  }

  private CondensedAttached attached() {
    return (CondensedAttached) frame.layout().attached.get(0);
  }

  /** The answer to one combination. */
  public final class Solution {
    private final FrameResult result;
    private final Map<Load, Double> loads = new LinkedHashMap<>();
    private final double[] ties;

    private Solution(Combination combination, FrameResult result) {
      this.result = result;
      this.ties = attached().ofTies(result.unknowns());
      combination
          .factors()
          .forEach(
              (loadCase, factor) -> {
                for (Load load : loadCase.loads()) {
                  loads.merge(load, factor, Double::sum);
                }
              });
    }

    /** The frame's part of it. */
    public FrameResult frame() {
      return result;
    }

    /** Deflection of the panel along its normal at a place, mm. */
    public double w(double x, double y) {
      CondensedPanel.Spot spot = panel.spot(x, y);
      double w = CondensedPanel.dot(spot.ofTies(), ties);
      for (Map.Entry<Load, Double> load : loads.entrySet()) {
        w += load.getValue() * spot.whole().at(panel.reduced(load.getKey()).u());
      }
      return w;
    }

    /** Forces of the ties on the panel. */
    public List<PanelTieForce> ties() {
      return attached().tieForces(result);
    }

    /** The larger of the residuals of frame and panel, each relative to its loads. */
    public double residual() {
      double worst = result.residual();
      for (Load load : loads.keySet()) {
        worst = Math.max(worst, panel.reduced(load).residual());
      }
      return worst;
    }

    /** The worst disagreement of load and tie motions in the panel (Maxwell, Betti), relative. */
    public double reciprocity() {
      double worst = 0;
      for (Load load : loads.keySet()) {
        worst = Math.max(worst, panel.reduced(load).reciprocity());
      }
      return worst;
    }
  }
}
