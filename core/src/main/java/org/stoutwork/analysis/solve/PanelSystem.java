package org.stoutwork.analysis.solve;

import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.PlateBending;
import org.stoutwork.linear.Factorisation;
import org.stoutwork.linear.LdlFactor;
import org.stoutwork.linear.SparseSymmetric;

/** The equations of one grid, factorised with every one-way support touching. */
final class PanelSystem {
  private static final double PULL = 1e-9;

  private final PanelGrid grid;
  private final PanelElements elements;
  private final PanelHolds holds;
  private final int[] order;
  private final Equations touching;

  /** Equations for one state of the one-way supports. */
  private static final class Equations {
    private final int[] place;
    private final SparseSymmetric matrix;
    private final LdlFactor factor;

    Equations(int[] place, SparseSymmetric matrix, LdlFactor factor) {
      this.place = place;
      this.matrix = matrix;
      this.factor = factor;
    }

    int[] place() {
      return place;
    }

    SparseSymmetric matrix() {
      return matrix;
    }

    LdlFactor factor() {
      return factor;
    }
  }

  PanelSystem(PanelGrid grid) {
    this.grid = grid;
    this.elements = new PanelElements(grid);
    this.holds = new PanelHolds(grid);
    this.order = PanelOrder.of(grid);
    this.touching = equations(new boolean[holds.holds().size()]);
  }

  PanelGrid grid() {
    return grid;
  }

  PanelElements elements() {
    return elements;
  }

  PanelHolds holds() {
    return holds;
  }

  private Equations equations(boolean[] open) {
    boolean[] out = new boolean[3 * grid.nodes()];
    for (int k = 0; k < out.length; k++) {
      out[k] = holds.fixed(k);
    }
    for (int h = 0; h < open.length; h++) {
      PanelHolds.Hold hold = holds.holds().get(h);
      if (hold.kind() == PanelHolds.Kind.CONTACT && !open[h]) {
        out[3 * hold.node()] = true;
      }
    }
    int[] place = new int[out.length];
    int count = 0;
    for (int node : order) {
      for (int d = 0; d < 3; d++) {
        place[3 * node + d] = out[3 * node + d] ? -1 : count++;
      }
    }
    SparseSymmetric matrix = matrix(place, count, open);
    int[] asNumbered = new int[count];
    Arrays.setAll(asNumbered, k -> k);
    Factorisation factorisation = LdlFactor.of(matrix, asNumbered);
    if (factorisation instanceof LdlFactor factor) {
      return new Equations(place, matrix, factor);
    }
    throw notHeld((Factorisation.Singular) factorisation, place, open);
  }

  private SparseSymmetric matrix(int[] place, int count, boolean[] open) {
    SparseSymmetric.Builder builder = SparseSymmetric.builder(count);
    for (int i = 0; i + 1 < grid.nx(); i++) {
      for (int j = 0; j + 1 < grid.ny(); j++) {
        if (grid.has(i, j)) {
          scatter(builder, place, elements.unknowns(i, j), elements.of(i, j).stiffness());
        }
      }
    }
    for (int h = 0; h < open.length; h++) {
      PanelHolds.Hold hold = holds.holds().get(h);
      int at = place[3 * hold.node()];
      if (hold.stiffness() > 0 && !open[h] && at >= 0) {
        builder.add(at, at, hold.stiffness());
      }
    }
    return builder.build();
  }

  private static void scatter(
      SparseSymmetric.Builder builder, int[] place, int[] unknowns, double[][] k) {
    for (int r = 0; r < PlateBending.SIZE; r++) {
      int pr = place[unknowns[r]];
      for (int c = r; pr >= 0 && c < PlateBending.SIZE; c++) {
        int pc = place[unknowns[c]];
        if (pc >= 0 && k[r][c] != 0) {
          builder.add(pr, pc, k[r][c]);
        }
      }
    }
  }

  private PanelNotHeldException notHeld(
      Factorisation.Singular singular, int[] place, boolean[] open) {
    int unknown = 0;
    while (place[unknown] != singular.unknown()) {
      unknown++;
    }
    boolean lifted = false;
    for (boolean o : open) {
      lifted |= o;
    }
    String what = new String[] {"sink", "turn about x", "turn about y"}[unknown % 3];
    return new PanelNotHeldException(
        "panel '"
            + grid.panel().name()
            + "' can "
            + what
            + " without resistance"
            + (lifted ? " after it has lifted off one-way supports" : "")
            + "; support it on one more line or hold it down");
  }

  /** Solves for forces on all unknowns; one-way supports all touch (and may pull). */
  double[] solveTouching(double[] forces) {
    return solve(touching, forces);
  }

  private static double[] solve(Equations e, double[] forces) {
    double[] b = new double[e.matrix().size()];
    for (int k = 0; k < forces.length; k++) {
      if (e.place()[k] >= 0) {
        b[e.place()[k]] = forces[k];
      }
    }
    double[] x = e.factor().solve(b);
    // One step of refinement takes the residual down to rounding.
    double[] ax = e.matrix().times(x);
    for (int k = 0; k < ax.length; k++) {
      ax[k] = b[k] - ax[k];
    }
    double[] correction = e.factor().solve(ax);
    double[] u = new double[forces.length];
    for (int k = 0; k < forces.length; k++) {
      int at = e.place()[k];
      u[k] = at >= 0 ? x[at] + correction[at] : 0;
    }
    return u;
  }

  /**
   * Solves for forces along the normal by node, letting one-way supports open.
   *
   * @throws PanelNotHeldException when the panel lifts off so far that nothing holds it
   */
  PanelState solve(double[] normalForces) {
    double[] f = new double[3 * grid.nodes()];
    for (int n = 0; n < normalForces.length; n++) {
      f[3 * n] = normalForces[n];
    }
    boolean[] open = new boolean[holds.holds().size()];
    double[] u = solveTouching(f);
    double[] reactions = reactions(u, f, open);
    if (pulls(reactions, f)) {
      open = new PanelContact(this, f, reactions).open();
      u = solve(equations(open), f);
      reactions = reactions(u, f, open);
    }
    return new PanelState(u, reactions, open, residual(u, f, reactions));
  }

  private boolean pulls(double[] reactions, double[] f) {
    double size = size(f);
    for (int h = 0; h < reactions.length; h++) {
      if (holds.holds().get(h).oneWay() && reactions[h] < -PULL * size) {
        return true;
      }
    }
    return false;
  }

  private static double size(double[] f) {
    double size = 0;
    for (int k = 0; k < f.length; k += 3) {
      size += Math.abs(f[k]);
    }
    return size;
  }

  /** Forces of the holds on the panel. */
  double[] reactions(double[] u, double[] f, boolean[] open) {
    double[] needed = elements.forces(u);
    List<PanelHolds.Hold> list = holds.holds();
    double[] reactions = new double[list.size()];
    for (int h = 0; h < reactions.length; h++) {
      PanelHolds.Hold hold = list.get(h);
      if (open[h]) {
        continue;
      }
      int k = 3 * hold.node();
      reactions[h] = hold.stiffness() > 0 ? -hold.stiffness() * u[k] : needed[k] - f[k];
    }
    return reactions;
  }

  /** Largest force that is missing at a free unknown, relative to all loads. */
  private double residual(double[] u, double[] f, double[] reactions) {
    double[] missing = elements.forces(u);
    for (int k = 0; k < f.length; k++) {
      missing[k] -= f[k];
    }
    for (int h = 0; h < reactions.length; h++) {
      missing[3 * holds.holds().get(h).node()] -= reactions[h];
    }
    double largest = 0;
    double side = Math.min(grid.panel().length(), grid.panel().width());
    for (int k = 0; k < f.length; k++) {
      if (!holds.fixed(k)) {
        largest = Math.max(largest, Math.abs(missing[k]) / (k % 3 == 0 ? 1 : side));
      }
    }
    double size = size(f);
    return size == 0 ? largest : largest / size;
  }

  /** Forces along the normal and moments about the panel's corner that do not cancel, relative. */
  double equilibriumError(double[] normalForces, PanelState state) {
    double[] sum = new double[3];
    double[] size = new double[3];
    double[] needed = elements.forces(state.u);
    double[] at = new double[normalForces.length];
    System.arraycopy(normalForces, 0, at, 0, at.length);
    for (int h = 0; h < state.reactions.length; h++) {
      at[holds.holds().get(h).node()] += state.reactions[h];
    }
    for (int i = 0; i < grid.nx(); i++) {
      for (int j = 0; j < grid.ny(); j++) {
        int n = grid.node(i, j);
        if (n >= 0) {
          // A force up at (x, y) turns about x by y F and about y by -x F.
          add(sum, size, 0, at[n], normalForces[n]);
          add(sum, size, 1, grid.y(j) * at[n], grid.y(j) * normalForces[n]);
          add(sum, size, 2, -grid.x(i) * at[n], grid.x(i) * normalForces[n]);
          for (int d = 1; d < 3; d++) {
            sum[d] += holds.fixed(3 * n + d) ? needed[3 * n + d] : 0;
          }
        }
      }
    }
    double worst = 0;
    for (int d = 0; d < 3; d++) {
      worst = Math.max(worst, Math.abs(sum[d]) / (size[d] == 0 ? 1 : size[d]));
    }
    return worst;
  }

  private static void add(double[] sum, double[] size, int d, double whole, double load) {
    sum[d] += whole;
    size[d] += Math.abs(load);
  }
}
