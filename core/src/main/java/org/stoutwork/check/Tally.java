package org.stoutwork.check;

import org.stoutwork.analysis.solve.CondensedFrame;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.result.SelfCheck;

/** Keeps the worst of every analysis of one inquiry. */
final class Tally {

  private int analyses;
  private double equilibrium;
  private double residual;
  private double reciprocity;

  FrameResult count(FrameResult result) {
    analyses++;
    equilibrium = Math.max(equilibrium, result.equilibriumError());
    residual = Math.max(residual, result.residual());
    return result;
  }

  void count(CondensedFrame.Solution plate) {
    count(plate.frame());
    residual = Math.max(residual, plate.residual());
    reciprocity = Math.max(reciprocity, plate.reciprocity());
  }

  /**
   * Two displacements that must be equal, as Maxwell's theorem has it.
   *
   * @param a one of them
   * @param b the other
   * @param floor size with which smaller ones are compared
   */
  void mustAgree(double a, double b, double floor) {
    double size = Math.max(floor, Math.max(Math.abs(a), Math.abs(b)));
    if (size > 0) {
      reciprocity = Math.max(reciprocity, Math.abs(a - b) / size);
    }
  }

  SelfCheck selfCheck() {
    return new SelfCheck(analyses, equilibrium, residual, reciprocity);
  }
}
