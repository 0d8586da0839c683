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
 * @param panels first-order results of panels by name
 * @param secondOrder second-order results, if asked for
 * @param bucklingFactors load factors in ascending order, if asked for
 * @param frequenciesHz natural frequencies in ascending order, Hz, if asked for
 */
public record FrameAnswers(
    Optional<Statics> first,
    Map<String, PanelResult> panels,
    Optional<Statics> secondOrder,
    Optional<List<Double>> bucklingFactors,
    Optional<List<Double>> frequenciesHz) {

  /** Copies the collections. */
  public FrameAnswers {
    panels = Collections.unmodifiableMap(new LinkedHashMap<>(panels));
    bucklingFactors = bucklingFactors.map(List::copyOf);
    frequenciesHz = frequenciesHz.map(List::copyOf);
  }

  /**
   * First-order results alone.
   *
   * @param first results of nodes and members
   * @param panels results of panels by name
   * @return the answers
   */
  public static FrameAnswers of(Statics first, Map<String, PanelResult> panels) {
    return new FrameAnswers(
        Optional.of(first), panels, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
