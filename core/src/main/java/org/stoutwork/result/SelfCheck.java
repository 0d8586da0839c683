package org.stoutwork.result;

/**
 * How well the analyses hold together; the worst of all that were made.
 *
 * @param analyses how many load cases and combinations were solved
 * @param equilibriumError unbalanced force over applied force
 * @param residual unbalanced nodal force over the largest nodal load
 * @param reciprocityError largest difference of two displacements that must be equal, over their
 *     size, among several pairs at every stiffness of the joints
 */
public record SelfCheck(
    int analyses, double equilibriumError, double residual, double reciprocityError) {

  /** What a sheet may be issued with. */
  public static final double ALLOWED = 1e-9;

  /** Whether equilibrium and reciprocity hold as the sheet says. */
  public boolean holds() {
    return equilibriumError <= ALLOWED && reciprocityError <= ALLOWED * 1e3;
  }
}
