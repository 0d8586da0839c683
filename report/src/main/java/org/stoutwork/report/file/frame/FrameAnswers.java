package org.stoutwork.report.file.frame;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.solve.PanelResult;

/**
 * What was worked out for a frame file.
 *
 * @param first first-order results; empty when only frequencies were asked for
 * @param secondOrder second-order results, if asked for
 * @param bucklingFactors load factors in ascending order, if asked for
 * @param frequenciesHz natural frequencies in ascending order, Hz, if asked for
 */
public record FrameAnswers(
    Optional<Solved> first,
    Optional<Solved> secondOrder,
    Optional<List<Double>> bucklingFactors,
    Optional<List<Double>> frequenciesHz) {

  /** Copies the lists. */
  public FrameAnswers {
    bucklingFactors = bucklingFactors.map(List::copyOf);
    frequenciesHz = frequenciesHz.map(List::copyOf);
  }

  /**
   * One solution.
   *
   * @param frame results of nodes and members
   * @param panels results of panels by name
   */
  public record Solved(Statics frame, Map<String, PanelResult> panels) {
    /** Copies the panels, in their order. */
    public Solved {
      panels = Collections.unmodifiableMap(new LinkedHashMap<>(panels));
    }
  }
}
