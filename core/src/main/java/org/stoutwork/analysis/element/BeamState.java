package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.Vec3;

/** Forces and shape of one beam under one loading. Immutable; the field is made when asked for. */
public final class BeamState {
  private final Beam beam;
  private final SpanLoad load;
  private final double[] startForces;
  private final double[] endForces;
  private final double[] startMotion;

  BeamState(
      Beam beam, SpanLoad load, double[] startForces, double[] endForces, double[] startMotion) {
    this.beam = beam;
    this.load = load;
    this.startForces = startForces;
    this.endForces = endForces;
    this.startMotion = startMotion;
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
    return new BeamField(beam.section(), beam.material(), load, startForces, startMotion);
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
