package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.BeamState;

/**
 * Unit slips of member ends in a frame: what each does to all others and to the responses of
 * interest. A slip looks to the beam like a motion of its node.
 */
final class Slips {
  private final PreparedFrame frame;
  private final List<JointSpring> places;
  private final Beam[] beam;
  private final double[][] shift;

  /** Resistance of place i (first index) against a unit slip at j. */
  final double[][] resistance;

  /** Resistance of the own member alone, nodes held. */
  final double[] own;

  /** Change of response o (first index) by a unit slip at j. */
  final double[][] effect;

  Slips(PreparedFrame frame, List<JointSpring> places, Readings readings) {
    this.frame = frame;
    this.places = places;
    int rank = places.size();
    this.beam = new Beam[rank];
    this.shift = new double[rank][];
    this.own = new double[rank];
    for (int i = 0; i < rank; i++) {
      JointSpring place = places.get(i);
      beam[i] = frame.layout().beams.get(place.member());
      shift[i] = beam[i].slip(place.atEnd(), place.direction().index());
      own[i] = forceOf(i, beam[i].state(shift[i], null));
    }
    this.resistance = new double[rank][rank];
    this.effect = new double[readings.size()][rank];
    for (int j = 0; j < rank; j++) {
      Readings.Motion motion = slipped(j);
      for (int i = 0; i < rank; i++) {
        resistance[i][j] = -forceOf(i, motion.beams().apply(beam[i]));
      }
      double[] change = readings.of(motion);
      for (int o = 0; o < change.length; o++) {
        effect[o][j] = change[o];
      }
    }
  }

  /** The frame's motion when place j slips by one unit. */
  private Readings.Motion slipped(int j) {
    double[] f = new double[frame.layout().equations.unknowns()];
    double[] on = beam[j].forces(shift[j]);
    int[] unknowns = beam[j].unknowns();
    for (int i = 0; i < on.length; i++) {
      f[unknowns[i]] += on[i];
    }
    GlobalSystem.Solved solved = frame.system().solve(f, false, null);
    return new Readings.Motion(
        solved,
        b -> {
          double[] u = SecondOrder.own(b, solved.u());
          if (b == beam[j]) {
            for (int i = 0; i < u.length; i++) {
              u[i] -= shift[j][i];
            }
          }
          return b.state(u, null);
        });
  }

  private double forceOf(int i, BeamState state) {
    double[] forces = places.get(i).atEnd() ? state.endForces() : state.startForces();
    return forces[places.get(i).direction().index()];
  }

  /** The force that place i passes on in a solution of the frame. */
  double force(int i, Readings.Motion motion) {
    return forceOf(i, motion.beams().apply(beam[i]));
  }
}
