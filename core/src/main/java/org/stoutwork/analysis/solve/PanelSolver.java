package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLoad;

/**
 * Solves a panel that stands on its own supports: two meshes, the finer with half the size of the
 * coarser, and Richardson's extrapolation between them, the error of the element falling with the
 * square of its size (L. F. Richardson, Phil. Trans. R. Soc. A 210, 1911).
 */
public final class PanelSolver {
  /** Part of the loads that may be lost in rounding before an answer counts as none. */
  private static final double UNBALANCED = 1e-6;

  private PanelSolver() {}

  /**
   * Solves one set of loads.
   *
   * @throws IllegalArgumentException when the panel is tied to a frame, or a load leaves it
   * @throws PanelNotHeldException when nothing keeps it from moving, or next to nothing
   */
  public static PanelResult solve(Panel panel, List<PanelLoad> loads) {
    if (!panel.ties().isEmpty()) {
      throw new IllegalArgumentException(
          "panel '" + panel.name() + "' is tied to a frame; solve it together with the frame");
    }
    List<PanelGrid> grids = PanelMesher.pair(panel, loads);
    PanelSystem coarse = new PanelSystem(grids.get(0));
    PanelSystem fine = new PanelSystem(grids.get(1));
    double[] forces = PanelLoads.forces(fine.grid(), loads);
    PanelState coarseState = coarse.solve(PanelLoads.forces(coarse.grid(), loads));
    PanelState fineState = fine.solve(forces);
    PanelField coarseField = PanelRecovery.field(coarse.grid(), coarse.elements(), coarseState.u);
    PanelField fineField = PanelRecovery.field(fine.grid(), fine.elements(), fineState.u);
    PanelExtrapolation best = new PanelExtrapolation(coarseField, fineField);
    List<PanelPointResult> report = best.report(panel.report());
    double equilibriumError = fine.equilibriumError(forces, fineState);
    refuseUnbalanced(panel, Math.max(equilibriumError, fineState.residual));
    return new PanelResult(
        panel.name(),
        report,
        best.extreme(false),
        best.extreme(true),
        best.meshError(report),
        PanelGround.byLine(panel, fine.holds(), fineState.reactions, fineState.open),
        List.of(),
        equilibriumError,
        fineState.residual,
        fineField);
  }

  private static void refuseUnbalanced(Panel panel, double error) {
    if (!(error <= UNBALANCED)) {
      throw new PanelNotHeldException(
          "panel '"
              + panel.name()
              + "' is held so softly that its motion drowns its bending: loads and reactions differ"
              + " by "
              + error
              + " of the loads, "
              + UNBALANCED
              + " is allowed; hold it more firmly");
    }
  }
}
