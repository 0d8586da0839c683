package org.stoutwork.report.command;

import java.util.Optional;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.Loose;
import org.stoutwork.analysis.solve.Outcome;
import org.stoutwork.analysis.solve.Preparation;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.analysis.solve.Unsettled;
import org.stoutwork.report.file.frame.Analysis;
import org.stoutwork.report.file.frame.FrameAnswers;
import org.stoutwork.report.file.frame.FrameFile;

/** Works out what a frame file asks for. */
final class FrameSolving {

  private FrameSolving() {}

  static FrameAnswers solve(FrameFile file) throws Ending {
    for (Analysis analysis : file.analyses()) {
      if (analysis != Analysis.STATIC) {
        throw refused("the analysis " + analysis + " is not available; ask for static");
      }
    }
    if (!file.panels().isEmpty()) {
      throw refused("panels are not available; leave them out");
    }
    PreparedFrame frame = prepared(FrameSolver.prepare(file.model()));
    return new FrameAnswers(
        Optional.of(result(frame.solve(file.loads()))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static PreparedFrame prepared(Preparation preparation) throws Ending {
    if (preparation instanceof PreparedFrame frame) {
      return frame;
    }
    throw refused(((Loose) preparation).message());
  }

  private static FrameResult result(Outcome outcome) throws Ending {
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
