package org.stoutwork.check;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.CondensedFrame;
import org.stoutwork.analysis.solve.CondensedPanel;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.PlateLoads;
import org.stoutwork.assembly.PlatedModel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.assembly.TopContact;
import org.stoutwork.bench.Bench;

/**
 * The top as a plate on the frame, at every level of the joints' stiffness: it presses on its
 * bearings and may part from them against the pull of its screws; the feet are held. The plate is
 * reduced to its bearings once, on two meshes, so that a level costs a small frame only. Solutions
 * are kept. Used by one inquiry; not thread-safe.
 */
public final class PlatedTop {

  private final Bench bench;
  private final Timbers timbers;
  private final boolean propped;
  private final Tally tally;
  private final Map<TopContact, OnMeshes> joined = new EnumMap<>(TopContact.class);
  private final Map<Asked, PlateAnswer> kept = new HashMap<>();
  private final PlateLoads loads;

  private record Asked(JointLevel level, Map<String, Double> factors) {}

  /** The frames of all levels, and each with the plate on two meshes. */
  private record OnMeshes(
      Map<JointLevel, PlatedModel> models,
      Map<JointLevel, CondensedFrame> usual,
      Map<JointLevel, CondensedFrame> coarse) {}

  /**
   * Reduces the plate and joins it to the frames.
   *
   * @param propped whether the frame is loose with its joints at their softest
   */
  PlatedTop(Bench bench, Timbers timbers, boolean propped, Tally tally) {
    this.bench = bench;
    this.timbers = timbers;
    this.propped = propped;
    this.tally = tally;
    this.loads = new PlateLoads(model(JointLevel.MEAN));
  }

  private OnMeshes join(TopContact contact) {
    Map<JointLevel, PlatedModel> models = new EnumMap<>(JointLevel.class);
    for (JointLevel level : JointLevel.values()) {
      models.put(
          level,
          propped && level == JointLevel.LOW
              ? PlatedModel.propped(bench, timbers::get, FloorContact.HELD, contact)
              : PlatedModel.of(bench, timbers::get, level, FloorContact.HELD, contact));
    }
    PlatedModel mean = models.get(JointLevel.MEAN);
    CondensedPanel onUsual = CondensedPanel.of(mean.top(), CondensedPanel.Mesh.FIRST);
    CondensedPanel onCoarse = CondensedPanel.of(mean.coarseTop(), CondensedPanel.Mesh.FIRST);
    return new OnMeshes(models, frames(models, onUsual), frames(models, onCoarse));
  }

  /** One frame a level; those that differ in their members alone share all that they can. */
  private static Map<JointLevel, CondensedFrame> frames(
      Map<JointLevel, PlatedModel> models, CondensedPanel panel) {
    FrameModel mean = models.get(JointLevel.MEAN).frame();
    CondensedFrame onMean = CondensedFrame.of(mean, panel);
    Map<JointLevel, CondensedFrame> frames = new EnumMap<>(JointLevel.class);
    models.forEach(
        (level, model) -> {
          FrameModel frame = model.frame();
          boolean alike = frame.equals(mean.withMembers(frame.members()));
          frames.put(
              level, alike ? onMean.withMembers(frame.members()) : CondensedFrame.of(frame, panel));
        });
    return frames;
  }

  private OnMeshes with(TopContact contact) {
    return joined.computeIfAbsent(contact, this::join);
  }

  /** The model of one level. */
  public PlatedModel model(JointLevel level) {
    return with(TopContact.MAY_PART).models().get(level);
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

  /**
   * Where the top would lift off altogether, as it may on a frame that folds, its bearings hold it
   * both ways, as the floor holds the feet of a bench that would tip.
   */
  private PlateAnswer solve(JointLevel level, Combination combination) {
    return solve(TopContact.MAY_PART, level, combination)
        .or(() -> solve(TopContact.HELD, level, combination))
        .orElseThrow(() -> new IllegalStateException("a top held both ways lifts"));
  }

  private Optional<PlateAnswer> solve(
      TopContact contact, JointLevel level, Combination combination) {
    OnMeshes on = with(contact);
    Optional<CondensedFrame.Solution> fine = on.usual().get(level).find(combination);
    Optional<CondensedFrame.Solution> rough = on.coarse().get(level).find(combination);
    if (fine.isEmpty() || rough.isEmpty()) {
      return Optional.empty();
    }
    List.of(fine.get(), rough.get()).forEach(tally::count);
    return Optional.of(new PlateAnswer(model(level).grid(), fine.get(), rough.get()));
  }
}
