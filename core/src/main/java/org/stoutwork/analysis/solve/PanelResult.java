package org.stoutwork.analysis.solve;

import java.util.List;

/**
 * The answer of a panel to one set of loads.
 *
 * @param panel its name
 * @param report the places asked for, extrapolated from two meshes
 * @param wMin smallest deflection along the normal (largest sag of a top) and where
 * @param wMax largest deflection along the normal and where
 * @param meshError estimated error of the finer mesh: largest difference between the extrapolated
 *     deflections and those of the finer mesh, relative to the largest deflection
 * @param reactions by support, finer mesh
 * @param ties forces of the ties to a frame, finer mesh; empty for a panel that stands alone
 * @param equilibriumError sum of loads and reactions (forces, and moments about both axes) relative
 *     to the loads
 * @param residual residual of the equations relative to the loads
 * @param field everything at the nodes of the finer mesh, not extrapolated
 */
public record PanelResult(
    String panel,
    List<PanelPointResult> report,
    PanelExtreme wMin,
    PanelExtreme wMax,
    double meshError,
    List<PanelReaction> reactions,
    List<PanelTieForce> ties,
    double equilibriumError,
    double residual,
    PanelField field) {
  /** Copies the lists. */
  public PanelResult {
    report = List.copyOf(report);
    reactions = List.copyOf(reactions);
    ties = List.copyOf(ties);
  }
}
