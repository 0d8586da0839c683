package org.stoutwork.check;

import java.util.LinkedHashMap;
import java.util.Map;
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

  private final JointLevel level;
  private final BenchModel model;
  private final TopLoads loads;
  private final PreparedFrame held;
  private final PreparedFrame standing;
  private final Map<LoadCase, FrameResult> kept = new LinkedHashMap<>();
  private final Tally tally;
  private final boolean propped;

  LevelAnalysis(Bench bench, Timbers timbers, JointLevel level, Tally tally) {
    this.level = level;
    this.tally = tally;
    BenchModel free = BenchModel.of(bench, timbers::get, level, FloorContact.MAY_LIFT);
    BenchModel fixed = BenchModel.of(bench, timbers::get, level, FloorContact.HELD);
    Preparation fixedPrepared = FrameSolver.prepare(fixed.frame());
    Preparation freePrepared = FrameSolver.prepare(free.frame());
    this.propped =
        level == JointLevel.LOW
            && (fixedPrepared instanceof Loose || freePrepared instanceof Loose);
    this.model = propped ? BenchModel.propped(bench, timbers::get, FloorContact.MAY_LIFT) : free;
    this.loads = new TopLoads(model);
    this.standing = prepared(propped ? FrameSolver.prepare(model.frame()) : freePrepared);
    this.held =
        prepared(
            propped
                ? FrameSolver.prepare(
                    BenchModel.propped(bench, timbers::get, FloorContact.HELD).frame())
                : fixedPrepared);
  }

  private static PreparedFrame prepared(Preparation preparation) {
    if (preparation instanceof Loose loose) {
      throw new LooseBench(loose);
    }
    return preparation.prepared();
  }

  /** The frame as a case was solved on it. */
  public FrameModel frame(GoverningCase governing) {
    boolean lifts =
        governing.floor() == FloorContact.MAY_LIFT
            && together(governing.loads()) instanceof FrameResult;
    return (lifts ? standing : held).model();
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

  /** The model, its feet free to lift. */
  public BenchModel model() {
    return model;
  }

  /** Its load cases. */
  public TopLoads loads() {
    return loads;
  }

  /** The effect of one load case with the feet held. */
  public FrameResult alone(LoadCase loadCase) {
    FrameResult result = kept.get(loadCase);
    if (result == null) {
      result = tally.count(held.solve(loadCase).result());
      kept.put(loadCase, result);
    }
    return result;
  }

  /** The answer to a combination with feet that may lift. */
  public Outcome together(Combination combination) {
    Outcome outcome = standing.solve(combination);
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
        : tally.count(held.solve(combination).result());
  }
}
