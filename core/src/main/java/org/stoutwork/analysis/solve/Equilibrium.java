package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.model.Vec3;

/** Sums forces and moments that ought to balance. */
final class Equilibrium {
  private final Vec3 centre;
  private final double reach;
  private Vec3 force = Vec3.ZERO;
  private Vec3 moment = Vec3.ZERO;
  private double size;

  /**
   * Begins a sum.
   *
   * @param centre moments are taken about it
   * @param reach length by which moments are compared with forces, mm
   */
  Equilibrium(Vec3 centre, double reach) {
    this.centre = centre;
    this.reach = reach;
  }

  Equilibrium addAll(List<Applied> loads) {
    loads.forEach(l -> add(l.at(), l.force(), l.moment()));
    return this;
  }

  Equilibrium add(Vec3 at, Vec3 f, Vec3 m) {
    force = force.plus(f);
    moment = moment.plus(m).plus(at.minus(centre).cross(f));
    size += f.length() + m.length() / reach;
    return this;
  }

  /** What is left over, relative to the sum of all sizes; 0 when there is nothing at all. */
  double error() {
    double rest = Math.max(force.length(), moment.length() / reach);
    return size == 0 ? 0 : rest / size;
  }
}
