package org.stoutwork.analysis.solve;

/** The answer of one grid to one set of loads. */
final class PanelState {
  /** Deflection w and rotations θx, θy by node. */
  final double[] u;

  /** Force along the normal on the panel, by hold. */
  final double[] reactions;

  /** True for a hold that has lifted. */
  final boolean[] open;

  /** Residual of the equations relative to the loads. */
  final double residual;

  PanelState(double[] u, double[] reactions, boolean[] open, double residual) {
    this.u = u;
    this.reactions = reactions;
    this.open = open;
    this.residual = residual;
  }

  double w(int node) {
    return u[3 * node];
  }
}
