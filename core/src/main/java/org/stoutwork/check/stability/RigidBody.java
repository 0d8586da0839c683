package org.stoutwork.check.stability;

import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Stance;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Edge;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;

/**
 * The bench as one heavy body: its weight with vises and machines, and where that weight acts, from
 * what its feet press on the floor. What lies on it for a time is left out, for nobody can count on
 * it.
 *
 * @param weight N
 * @param x of its centre from the left end of the top, mm
 * @param y of its centre from the front edge of the top, mm
 */
record RigidBody(double weight, double x, double y) {

  static RigidBody of(Inquiry inquiry) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    FrameResult standing = mean.alone(mean.permanent());
    double force = 0;
    double aboutY = 0;
    double aboutX = 0;
    for (String foot : mean.model().feet()) {
      double up = standing.reaction(foot)[2];
      Vec3 at = mean.model().frame().nodes().get(foot);
      force += up;
      aboutY += up * at.x();
      aboutX += up * at.y();
    }
    return new RigidBody(force, aboutY / force, aboutX / force);
  }

  /** Lever of the weight about the side of the outline towards an edge, mm; inside is positive. */
  double lever(Bench bench, Edge edge) {
    double side = Stance.edge(bench, edge);
    return switch (edge) {
      case FRONT -> y - side;
      case BACK -> side - y;
      case LEFT -> x - side;
      case RIGHT -> side - x;
    };
  }

  /** How far an edge of the top stands out beyond the outline, mm. */
  static double overhang(Bench bench, Edge edge) {
    double side = Stance.edge(bench, edge);
    return switch (edge) {
      case FRONT, LEFT -> side;
      case BACK -> bench.top().width().mm() - side;
      case RIGHT -> bench.top().length().mm() - side;
    };
  }
}
