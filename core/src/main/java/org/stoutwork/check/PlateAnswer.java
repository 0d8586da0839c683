package org.stoutwork.check;

import org.stoutwork.analysis.solve.CondensedFrame;
import org.stoutwork.assembly.TopGrid;

/**
 * How the plated top moves under one combination, by two meshes.
 *
 * @param grid places that may be asked
 * @param usual answer of the usual mesh
 * @param coarse answer of a mesh of about twice its size
 */
public record PlateAnswer(
    TopGrid grid, CondensedFrame.Solution usual, CondensedFrame.Solution coarse) {

  /** Upward movement of a place by the usual mesh, mm. */
  public double onUsual(int line, int station) {
    return usual.w(grid.stations().get(station), grid.lines().get(line));
  }

  /** Upward movement of a place by the coarser mesh, mm. */
  public double onCoarse(int line, int station) {
    return coarse.w(grid.stations().get(station), grid.lines().get(line));
  }

  /**
   * Upward movement of a place, extrapolated from both meshes (L. F. Richardson, Phil. Trans. A
   * 210, 1911; the error falls with the square of the size), mm.
   */
  public double at(int line, int station) {
    double better = onUsual(line, station);
    return better + (better - onCoarse(line, station)) / 3;
  }
}
