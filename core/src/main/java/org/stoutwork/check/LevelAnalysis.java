package org.stoutwork.check;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.Loose;
import org.stoutwork.analysis.solve.Outcome;
import org.stoutwork.analysis.solve.Preparation;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;

/**
 * The bench analysed at one level of its joints' stiffness: with feet held, so that single forces
 * add up, and with feet that may lift, for the combinations that decide. Solutions are kept. Used
 * by one inquiry; not thread-safe.
 */
public final class LevelAnalysis {

  private final Bench bench;
  private final Timbers timbers;
  private final JointLevel level;
  private final boolean propped;
  private final BenchModel model;
  private final TopLoads loads;
  private final LoadCase permanent;
  private final LoadCase stored;
  private final PreparedFrame frame;
  private final IdentityHashMap<LoadCase, FrameResult> kept = new IdentityHashMap<>();
  private final IdentityHashMap<FrameResult, double[]> pushes = new IdentityHashMap<>();
  private final Tally tally;

  /** Analyses a bench with its joints at their mean. */
  static LevelAnalysis mean(Bench bench, Timbers timbers, Tally tally) {
    BenchModel model = BenchModel.of(bench, timbers::get, JointLevel.MEAN, FloorContact.of(bench));
    return new LevelAnalysis(
        bench, timbers, JointLevel.MEAN, model, FrameSolver.prepare(model.frame()), false, tally);
  }

  /**
   * Analyses the same bench at another level; only the springs of its joints differ. A frame that
   * is loose with its joints at their softest is propped.
   */
  LevelAnalysis at(JointLevel other) {
    BenchModel changed = BenchModel.of(bench, timbers::get, other, FloorContact.of(bench));
    Preparation preparation = frame.withMembers(changed.frame().members());
    boolean loose = other == JointLevel.LOW && preparation instanceof Loose;
    if (loose) {
      changed = BenchModel.propped(bench, timbers::get, FloorContact.of(bench));
      preparation = frame.withMembers(changed.frame().members());
    }
    return new LevelAnalysis(bench, timbers, other, changed, preparation, loose, tally);
  }

  private LevelAnalysis(
      Bench bench,
      Timbers timbers,
      JointLevel level,
      BenchModel model,
      Preparation preparation,
      boolean propped,
      Tally tally) {
    if (preparation instanceof Loose loose) {
      throw new LooseBench(loose);
    }
    this.bench = bench;
    this.timbers = timbers;
    this.level = level;
    this.propped = propped;
    this.tally = tally;
    this.model = model;
    this.loads = new TopLoads(model);
    this.permanent = loads.permanent();
    this.stored = loads.stored();
    this.frame = preparation.prepared();
  }

  /** The frame as a case was solved on it. */
  public FrameModel frame(GoverningCase governing) {
    boolean lifts =
        governing.floor() == FloorContact.MAY_LIFT
            && together(governing.loads()) instanceof FrameResult;
    if (lifts) {
      return frame.model();
    }
    return propped
        ? BenchModel.propped(bench, timbers::get, FloorContact.HELD).frame()
        : BenchModel.of(bench, timbers::get, level, FloorContact.HELD).frame();
  }

  /**
   * Whether the frame is loose with its joints at their softest. It is then held up by a small part
   * of their mean stiffness: what grows out of proportion with it has no limit.
   */
  boolean propped() {
    return propped;
  }

  /** The level. */
  public JointLevel level() {
    return level;
  }

  /** The model, its feet free to lift unless they are fixed to the floor. */
  public BenchModel model() {
    return model;
  }

  /** Its load cases. */
  public TopLoads loads() {
    return loads;
  }

  /** Weight of the bench, its vises and its machines; always the same case. */
  public LoadCase permanent() {
    return permanent;
  }

  /** Stock on the top and gear on the shelf; always the same case. */
  public LoadCase stored() {
    return stored;
  }

  /** The effect of one load case with the feet held. */
  public FrameResult alone(LoadCase loadCase) {
    FrameResult result = kept.get(loadCase);
    if (result == null) {
      result = tally.count(frame.held(loadCase));
      kept.put(loadCase, result);
    }
    return result;
  }

  /** What the feet press on the floor in a result for one load case, N; do not change the array. */
  double[] pushes(FrameResult result) {
    return pushes.computeIfAbsent(
        result, r -> model.feet().stream().mapToDouble(foot -> r.reaction(foot)[2]).toArray());
  }

  /** Finds the effects of many load cases at once, which is quicker than one by one. */
  void prepare(Collection<LoadCase> cases) {
    Set<LoadCase> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
    wanted.addAll(cases);
    wanted.removeAll(kept.keySet());
    List<LoadCase> inOrder = cases.stream().filter(wanted::remove).toList();
    List<FrameResult> results = frame.held(inOrder);
    for (int i = 0; i < results.size(); i++) {
      kept.put(inOrder.get(i), tally.count(results.get(i)));
    }
  }

  private Map<FrameResult, Double> parts(Combination combination) {
    Map<FrameResult, Double> parts = new LinkedHashMap<>();
    combination
        .factors()
        .forEach((loadCase, factor) -> parts.merge(alone(loadCase), factor, Double::sum));
    return parts;
  }

  /** The answer to a combination with feet that may lift. */
  public Outcome together(Combination combination) {
    Outcome outcome = frame.together(combination.name(), parts(combination));
    if (outcome instanceof FrameResult result) {
      tally.count(result);
    }
    return outcome;
  }

  /**
   * The answer to a combination with feet that may lift; where the bench would tip altogether,
   * which is a verdict of its own, that with the feet held.
   */
  public FrameResult settled(Combination combination) {
    Outcome outcome = together(combination);
    return outcome instanceof FrameResult result
        ? result
        : tally.count(frame.heldTogether(combination.name(), parts(combination)));
  }
}
