package org.stoutwork.study;

import java.util.List;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.result.CheckResult;

/**
 * The frame from which one check took its figures, so that anyone can solve it again by other
 * means: the assembled bench, joints at their mean stiffness, under the loads that govern, their
 * factors multiplied in.
 *
 * @param check that rests on it
 * @param frame nodes, members, springs, supports
 * @param loads that act together
 * @param quantity that the check read, in words; empty where it read the forces of a part
 * @param value that it read, mm
 * @param terms movements whose sum is the value
 */
public record GoverningModel(
    CheckResult.Checked check,
    FrameModel frame,
    LoadCase loads,
    String quantity,
    double value,
    List<GoverningCase.Term> terms) {

  /** Keeps its own copy. */
  public GoverningModel {
    terms = List.copyOf(terms);
  }
}
