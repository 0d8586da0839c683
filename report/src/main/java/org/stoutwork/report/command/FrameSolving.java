package org.stoutwork.report.command;

import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.Loose;
import org.stoutwork.analysis.solve.Mode;
import org.stoutwork.analysis.solve.Modes;
import org.stoutwork.analysis.solve.Outcome;
import org.stoutwork.analysis.solve.PanelFrameSolver;
import org.stoutwork.analysis.solve.SecondOrder;
import org.stoutwork.analysis.solve.SecondOrderResult;
import org.stoutwork.analysis.solve.Unsettled;
import org.stoutwork.report.file.frame.Analysis;
import org.stoutwork.report.file.frame.FirstOrder;
import org.stoutwork.report.file.frame.FrameAnswers;
import org.stoutwork.report.file.frame.FrameFile;
import org.stoutwork.report.file.frame.OnDisplaced;
import org.stoutwork.report.file.frame.PanelModels;

/** Works out what a frame file asks for. */
final class FrameSolving {

  /** As many load factors or frequencies are worked out; fewer where there are no more. */
  private static final int MODES = 6;

  private final FrameFile file;
  private final LoadCase loads;
  private final PanelFrameSolver solver;

  private FrameSolving(FrameFile file, LoadCase loads, PanelFrameSolver solver) {
    this.file = file;
    this.loads = loads;
    this.solver = solver;
  }

  static FrameAnswers solve(FrameFile file) throws Ending {
    LoadCase loads = PanelModels.loads(file);
    PanelFrameSolver.Answer answer =
        PanelFrameSolver.prepare(file.model(), PanelModels.panels(file), List.of(loads));
    if (answer instanceof PanelFrameSolver.Refused refused) {
      throw refused(refused.loose().message());
    }
    return new FrameSolving(file, loads, answer.solver()).answers();
  }

  private FrameAnswers answers() throws Ending {
    boolean onlyFrequencies = file.analyses().stream().allMatch(a -> a == Analysis.FREQUENCIES);
    return new FrameAnswers(
        onlyFrequencies ? Optional.empty() : Optional.of(firstOrder()),
        asks(Analysis.SECOND_ORDER) ? Optional.of(secondOrder()) : Optional.empty(),
        asks(Analysis.BUCKLING) ? Optional.of(bucklingFactors()) : Optional.empty(),
        asks(Analysis.FREQUENCIES) ? Optional.of(frequencies()) : Optional.empty());
  }

  private boolean asks(Analysis analysis) {
    return file.analyses().contains(analysis);
  }

  private FrameAnswers.Solved firstOrder() throws Ending {
    PanelFrameSolver.Result result = solver.solve(loads);
    return new FrameAnswers.Solved(new FirstOrder(found(result.frame())), result.panels());
  }

  private FrameAnswers.Solved secondOrder() throws Ending {
    PanelFrameSolver.SecondOrderAnswer answer =
        solver.secondOrder(Combination.of(loads), SecondOrder.PIECES);
    if (answer.frame() instanceof SecondOrderResult result) {
      return new FrameAnswers.Solved(new OnDisplaced(file.model(), result), answer.panels());
    }
    throw refused(((SecondOrder.NoAnswer) answer.frame()).message());
  }

  private List<Double> bucklingFactors() {
    return values(Modes.buckling(solver.frame(), Combination.of(loads), MODES));
  }

  private List<Double> frequencies() {
    return values(Modes.frequencies(solver.frame(), MODES));
  }

  private static List<Double> values(List<Mode> modes) {
    return modes.stream().map(Mode::value).sorted().toList();
  }

  private static FrameResult found(Outcome outcome) throws Ending {
    if (outcome instanceof FrameResult found) {
      return found;
    }
    throw refused(
        outcome instanceof Loose loose ? loose.message() : ((Unsettled) outcome).message());
  }

  private static Ending refused(String message) {
    return new Ending(ExitCode.REFUSED, message);
  }
}
