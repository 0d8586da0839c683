package org.stoutwork.assembly;

import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Layout;

/** The outline on which a bench stands: it tips about one of its sides. */
public final class Stance {

  private Stance() {}

  /** The side of the outline towards an edge of the top; X or Y in mm. */
  public static double edge(Bench bench, Edge edge) {
    return switch (edge) {
      case FRONT ->
          bench.endFrames().stream()
              .mapToDouble(f -> Layout.standFront(bench, f))
              .max()
              .orElseThrow();
      case BACK ->
          bench.endFrames().stream()
              .mapToDouble(f -> Layout.standBack(bench, f))
              .min()
              .orElseThrow();
      case LEFT -> end(bench.endFrames().get(0), -1);
      case RIGHT -> end(bench.endFrames().get(bench.endFrames().size() - 1), 1);
    };
  }

  private static double end(EndFrame frame, int sign) {
    double half =
        frame.foot().map(foot -> foot.thickness().mm() / 2).orElse(frame.leg().along().mm() / 2);
    return frame.at().mm() + sign * half;
  }
}
