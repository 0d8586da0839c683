package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.solve.FrameResult;

/**
 * What was worked out for a frame file.
 *
 * @param first first-order results; empty when only frequencies were asked for
 * @param secondOrder second-order results, if asked for
 * @param bucklingFactors load factors in ascending order, if asked for
 * @param frequenciesHz natural frequencies in ascending order, Hz, if asked for
 */
public record FrameAnswers(
    Optional<FrameResult> first,
    Optional<FrameResult> secondOrder,
    Optional<List<Double>> bucklingFactors,
    Optional<List<Double>> frequenciesHz) {

  /** Copies the lists. */
  public FrameAnswers {
    bucklingFactors = bucklingFactors.map(List::copyOf);
    frequenciesHz = frequenciesHz.map(List::copyOf);
  }

  /** First-order results alone. */
  public static FrameAnswers of(FrameResult first) {
    return new FrameAnswers(
        Optional.of(first), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
