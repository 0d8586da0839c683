package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.Vec3;

/** Forces and shape of one beam under one loading. Immutable; the field is made when asked for. */
public final class BeamState {
  private final Beam beam;
  private final SpanLoad load;
  private final double[] startForces;
  private final double[] endForces;
  private final double[] startSlip;
  private final double[] moved;

  /**
   * What is known of it.
   *
   * @param answer forces at its ends and slips of the springs there
   * @param moved displacements of its nodes, in the order of {@link Beam#unknowns()}
   */
  BeamState(Beam beam, SpanLoad load, BasicSystem.Answer answer, double[] moved) {
    this.beam = beam;
    this.load = load;
    this.startForces = answer.startForces();
    this.endForces = answer.endForces();
    this.startSlip = answer.startSlip();
    this.moved = moved;
  }

  /** Fx Fy Fz Mx My Mz on the flexible part at its start, local axes. */
  public double[] startForces() {
    return startForces.clone();
  }

  /** Fx Fy Fz Mx My Mz on the flexible part at its end, local axes. */
  public double[] endForces() {
    return endForces.clone();
  }

  /** Internal forces and displacements all along. */
  public BeamField field() {
    double[] start = beam.startMotion(moved);
    for (int i = 0; i < 6; i++) {
      start[i] -= startSlip[i];
    }
    return new BeamField(beam.section(), beam.material(), load, startForces, start);
  }

  /** The beam. */
  public Beam beam() {
    return beam;
  }

  /** Global components of a local vector of this beam. */
  public Vec3 toGlobal(Vec3 local) {
    return beam.axes().toGlobal(local);
  }
}
