package org.stoutwork.bench.sketch;

import java.util.List;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.Top;
import org.stoutwork.quantity.Length;

/**
 * Refuses what cannot stand where it is said to stand: parts outside others, parts in one place.
 */
final class Soundness {

  private static final double LEAST_GAP = 50;

  private final Answers answers;
  private final Top top;
  private final double height;

  Soundness(Answers answers, Top top, double height) {
    this.answers = answers;
    this.top = top;
    this.height = height;
  }

  void check(List<EndFrame> frames, List<Stretcher> stretchers) {
    if (frames.size() < 2) {
      answers.fault("endFrames", "only one", "a bench needs two or more");
      return;
    }
    for (int i = 0; i < frames.size(); i++) {
      legsUnderTop(i, frames.get(i));
      if (i > 0) {
        apart(i, frames.get(i - 1), frames.get(i));
      }
    }
    oneRoom(frames, stretchers);
    if (answers.faults().isEmpty()) {
      new LegCuts(answers, frames, stretchers).check();
      new LapsMeeting(answers).check(frames, stretchers);
      new BoltsMeeting(answers).check(frames, stretchers);
    }
  }

  private void legsUnderTop(int i, EndFrame frame) {
    double half = frame.leg().along().mm() / 2;
    double length = top.length().mm();
    if (frame.at().mm() - half < 0 || frame.at().mm() + half > length) {
      answers.fault(
          "endFrames[%s].at".formatted(i),
          frame.at() + ", which puts a leg outside the top",
          "%s to %s is allowed for legs of %s"
              .formatted(Length.ofMm(half), Length.ofMm(length - half), frame.leg().along()));
    }
    double taken = frame.frontInset().mm() + frame.backInset().mm() + 2 * frame.leg().across().mm();
    double left = top.width().mm() - taken;
    if (left < LEAST_GAP) {
      answers.fault(
          "endFrames[%s].legs".formatted(i),
          "two legs of %s with insets %s and %s"
              .formatted(frame.leg().across(), frame.frontInset(), frame.backInset()),
          "a top %s wide leaves %s between them; at least %s is needed for a rail"
              .formatted(top.width(), Length.ofMm(left), Length.ofMm(LEAST_GAP)));
    }
    double roomForLegs =
        height - top.thicknessMm() - Layout.legBottom(frame) - frame.topRail().depth().mm();
    if (roomForLegs < LEAST_GAP) {
      answers.fault(
          "height",
          Length.ofMm(height).toString(),
          "top, top rail and foot leave %s of leg; at least %s is needed"
              .formatted(Length.ofMm(roomForLegs), Length.ofMm(LEAST_GAP)));
    }
  }

  private void apart(int i, EndFrame before, EndFrame frame) {
    double gap =
        frame.at().mm()
            - before.at().mm()
            - (frame.leg().along().mm() + before.leg().along().mm()) / 2;
    if (gap < LEAST_GAP) {
      answers.fault(
          "endFrames[%s].at".formatted(i),
          frame.at() + ", which overlaps or nearly touches the frame before it",
          "end frames are named from left to right with at least %s between their legs"
              .formatted(Length.ofMm(LEAST_GAP)));
    }
  }

  /** Two stretchers on one line may not take the same height. */
  private void oneRoom(List<EndFrame> frames, List<Stretcher> stretchers) {
    for (int i = 0; i < stretchers.size(); i++) {
      Stretcher a = stretchers.get(i);
      for (int k = 0; k < i; k++) {
        Stretcher b = stretchers.get(k);
        double clear = Math.max(a.lowestMm() - b.highestMm(), b.lowestMm() - a.highestMm());
        if (a.line() == b.line() && clear < 0) {
          answers.fault(
              "stretchers[%s]".formatted(i),
              "in the place of the %s".formatted(b.name()),
              "two stretchers on the %s line must be clear of one another, so move one by %s"
                  .formatted(a.line().words(), Length.ofMm(-clear)));
        }
      }
      new MiddleInRail(answers).check(i, a, frames);
    }
  }
}
