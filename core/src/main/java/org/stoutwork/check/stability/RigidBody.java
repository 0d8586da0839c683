package org.stoutwork.check.stability;

import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.assembly.Stance;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Edge;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;

/**
 * The bench as one heavy body: its weight with vises and machines, and where that weight acts, from
 * what its feet press on the floor. What lies on it for a time is left out, for nobody can count on
 * it.
 *
 * <p>The strips that stand for the top in the frame have their weight on the lines of a grid, which
 * need not lie evenly; the top's own weight is put back to the middle of the top.
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
    Vec3 shift = towardsMiddle(mean.model());
    return new RigidBody(force, (aboutY + shift.x()) / force, (aboutX + shift.y()) / force);
  }

  /** Weight of the top's strips times the way from their common centre to the middle, N mm. */
  private static Vec3 towardsMiddle(BenchModel model) {
    FrameModel frame = model.frame();
    Vec3 middle = new Vec3(model.grid().length() / 2, model.grid().width() / 2, 0);
    double x = 0;
    double y = 0;
    for (Part part : model.parts()) {
      if (part.kind() == PartKind.TOP) {
        for (Piece piece : part.pieces()) {
          Member member = frame.members().get(piece.member());
          Vec3 from = frame.nodes().get(member.from());
          Vec3 to = frame.nodes().get(member.to());
          double volume =
              frame.sections().get(member.section()).area() * to.minus(from).length() * 1e-9;
          double weight =
              volume * frame.materials().get(member.material()).density() * TopLoads.GRAVITY;
          x += weight * (middle.x() - (from.x() + to.x()) / 2);
          y += weight * (middle.y() - (from.y() + to.y()) / 2);
        }
      }
    }
    return new Vec3(x, y, 0);
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
