package org.stoutwork.check;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.CondensedFrame;
import org.stoutwork.analysis.solve.CondensedPanel;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.PlateLoads;
import org.stoutwork.assembly.PlatedModel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.assembly.TopContact;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.bench.Bench;

/**
 * The top as a plate on the frame, at every level of the joints' stiffness: it presses on its
 * bearings and may part from them against the pull of its screws; the feet are held. The plate is
 * reduced to its bearings once, on two meshes, so that a level costs a small frame only. Solutions
 * are kept. Used by one inquiry; not thread-safe.
 */
public final class PlatedTop {

  private final Map<JointLevel, PlatedModel> models = new EnumMap<>(JointLevel.class);
  private final Map<JointLevel, CondensedFrame> usual = new EnumMap<>(JointLevel.class);
  private final Map<JointLevel, CondensedFrame> coarse = new EnumMap<>(JointLevel.class);
  private final Map<Asked, PlateAnswer> kept = new HashMap<>();
  private final PlateLoads loads;
  private final Tally tally;

  private record Asked(JointLevel level, Map<String, Double> factors) {}

  /**
   * Reduces the plate and joins it to the frames.
   *
   * @param propped whether the frame is loose with its joints at their softest
   */
  PlatedTop(Bench bench, Timbers timbers, boolean propped, Tally tally) {
    this.tally = tally;
    for (JointLevel level : JointLevel.values()) {
      models.put(
          level,
          propped && level == JointLevel.LOW
              ? PlatedModel.propped(bench, timbers::get, FloorContact.HELD, TopContact.MAY_PART)
              : PlatedModel.of(bench, timbers::get, level, FloorContact.HELD, TopContact.MAY_PART));
    }
    PlatedModel mean = models.get(JointLevel.MEAN);
    CondensedPanel onUsual = CondensedPanel.of(mean.top(), CondensedPanel.Mesh.FIRST);
    CondensedPanel onCoarse = CondensedPanel.of(mean.coarseTop(), CondensedPanel.Mesh.FIRST);
    models.forEach(
        (level, model) -> {
          usual.put(level, CondensedFrame.of(model.frame(), onUsual));
          coarse.put(level, CondensedFrame.of(model.frame(), onCoarse));
        });
    this.loads = new PlateLoads(mean);
  }

  /** The model of one level. */
  public PlatedModel model(JointLevel level) {
    return models.get(level);
  }

  /** The load cases. */
  public PlateLoads loads() {
    return loads;
  }

  /** The answer to load cases that act together, each with its factor. */
  public PlateAnswer under(JointLevel level, Map<LoadCase, Double> parts) {
    Map<String, Double> factors = new LinkedHashMap<>();
    parts.forEach((loadCase, factor) -> factors.put(loadCase.name(), factor));
    Asked asked = new Asked(level, factors);
    PlateAnswer answer = kept.get(asked);
    if (answer == null) {
      answer = solve(level, new Combination(String.join(" + ", factors.keySet()), parts));
      kept.put(asked, answer);
    }
    return answer;
  }

  private PlateAnswer solve(JointLevel level, Combination combination) {
    CondensedFrame.Solution fine = usual.get(level).solve(combination);
    CondensedFrame.Solution rough = coarse.get(level).solve(combination);
    List.of(fine, rough).forEach(tally::count);
    TopGrid grid = models.get(level).grid();
    return new PlateAnswer(grid, fine, rough);
  }
}
