package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.linear.Complementarity;

/**
 * Which nodes of one-way supports lift. With every support touching, an opening z at each node
 * changes the reactions to r = M z + q; the state sought has z ≥ 0, r ≥ 0 and one of them zero.
 */
final class PanelContact {
  private final PanelSystem system;
  private final List<Integer> oneWay = new ArrayList<>();
  private final double[] q;
  private final double[][] m;

  /**
   * Prepares the question.
   *
   * @param reactions with all supports touching
   */
  PanelContact(PanelSystem system, double[] forces, double[] reactions) {
    this.system = system;
    List<PanelHolds.Hold> holds = system.holds().holds();
    for (int h = 0; h < holds.size(); h++) {
      if (holds.get(h).oneWay()) {
        oneWay.add(h);
      }
    }
    int n = oneWay.size();
    q = new double[n];
    m = new double[n][n];
    for (int c = 0; c < n; c++) {
      q[c] = reactions[oneWay.get(c)];
      double[] change = changeByOpening(holds.get(oneWay.get(c)), forces.length);
      for (int r = 0; r < n; r++) {
        m[r][c] = change[oneWay.get(r)];
      }
    }
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < r; c++) {
        double mean = (m[r][c] + m[c][r]) / 2;
        m[r][c] = mean;
        m[c][r] = mean;
      }
    }
  }

  /** Changes of all reactions when the seat of one hold sinks by -1, that is, rises by 1. */
  private double[] changeByOpening(PanelHolds.Hold hold, int size) {
    double[] seat = new double[size];
    boolean[] none = new boolean[system.holds().holds().size()];
    int k = 3 * hold.node();
    if (hold.stiffness() > 0) {
      seat[k] = hold.stiffness();
      double[] u = system.solveTouching(seat);
      double[] change = system.reactions(u, new double[size], none);
      for (int h = 0; h < change.length; h++) {
        if (system.holds().holds().get(h).equals(hold)) {
          change[h] += hold.stiffness();
        }
      }
      return change;
    }
    seat[k] = 1;
    double[] needed = system.elements().forces(seat);
    double[] loads = new double[size];
    for (int i = 0; i < size; i++) {
      loads[i] = -needed[i];
    }
    double[] u = system.solveTouching(loads);
    u[k] = 1;
    return system.reactions(u, new double[size], none);
  }

  /** True for each hold that opens. */
  boolean[] open() {
    boolean[] open = new boolean[system.holds().holds().size()];
    Complementarity.Answer answer = Complementarity.solve(m, q);
    if (answer instanceof Complementarity.Settled settled) {
      for (int c = 0; c < oneWay.size(); c++) {
        open[oneWay.get(c)] = settled.open()[c];
      }
      return open;
    }
    String why =
        answer instanceof Complementarity.Unfinished
            ? "' finds no lasting state of its one-way supports; hold it both ways somewhere"
            : "' tips over or lifts off its one-way supports; hold it down or move the loads";
    throw new PanelNotHeldException("panel '" + system.grid().panel().name() + why);
  }
}
